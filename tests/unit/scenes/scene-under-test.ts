import { sceneOf, type ConditionName } from "../../scenes/conditions.ts";
import type { SceneSettings } from "../../scenes/scene-settings.ts";
import { imagePoint } from "@overcue/shared-geometry/point";
import { pixels } from "@overcue/shared-geometry/units";

/**
 * A condition's scene at half its size, without noise, sharpening and compression, so that what the painter does can be measured in
 * it, and soon.
 */
export function cleanScene(name: ConditionName, seed: number, change: Partial<SceneSettings> = {}): SceneSettings {
  const scene = sceneOf(name, seed);
  const { camera } = scene;
  return {
    ...scene,
    camera: {
      ...camera,
      width: pixels(camera.width / 2),
      height: pixels(camera.height / 2),
      focal: pixels(camera.focal / 2),
      principal: imagePoint(camera.principal.x / 2, camera.principal.y / 2),
    },
    sensor: { ...scene.sensor, sharpen: 0, grain: 0, quality: 0 },
    ...change,
  };
}
