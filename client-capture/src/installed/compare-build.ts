import { z } from "zod";

const buildSchema = z.object({ build: z.string().min(1) });

/** The name of the page that the relay serves where it is another one than this; null where it is the same, or the relay does not say. */
export async function newerBuild(): Promise<string | null> {
  const own = document.querySelector<HTMLMetaElement>('meta[name="overcue-build"]')?.content ?? "";
  if (own === "") return null;
  try {
    const answer = await fetch("/phone/build.json", { cache: "no-store" });
    const told = buildSchema.safeParse(await answer.json());
    return told.success && told.data.build !== own ? told.data.build : null;
  } catch {
    return null;
  }
}
