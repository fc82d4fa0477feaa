import { join } from "node:path";

/** Where `vite build client-display` leaves the pages. */
export const pagesFolder = join(import.meta.dirname, "../../../build/client-display");
