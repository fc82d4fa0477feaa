/** Whether WebGL here is drawn by the processor, where a "GPU" delegate is ten times slower than plain code. */
export function rendersInSoftware(): boolean {
  const context = new OffscreenCanvas(1, 1).getContext("webgl2");
  if (context === null) return true;
  const info = context.getExtension("WEBGL_debug_renderer_info");
  const renderer: unknown = context.getParameter(info === null ? context.RENDERER : info.UNMASKED_RENDERER_WEBGL);
  context.getExtension("WEBGL_lose_context")?.loseContext();
  return typeof renderer === "string" && /swiftshader|llvmpipe|software|basic render/i.test(renderer);
}
