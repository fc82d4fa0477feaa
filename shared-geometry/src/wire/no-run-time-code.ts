import { z } from "zod";

/**
 * The content policy allows no code made at run time, which zod would otherwise try for speed. Imported before anything
 * that builds a schema.
 */
z.config({ jitless: true });
