import { Builder } from "flatbuffers";

/** How a model wants its picture: (value - mean) / std, on values 0 to 255. */
export interface Normalization {
  readonly mean: number;
  readonly std: number;
}

/**
 * The bytes of a model's description in TensorFlow Lite's public metadata schema (metadata_schema.fbs, file identifier M001):
 * one sub-graph with one RGB picture as input, normalised as said. Numbers in the calls below are the schema's field slots.
 */
export function normalizationMetadata({ mean, std }: Normalization): Uint8Array {
  const builder = new Builder(512);
  const floats = (value: number): number => {
    builder.startVector(4, 1, 4);
    builder.addFloat32(value);
    return builder.endVector();
  };
  const tables = (offset: number): number => {
    builder.startVector(4, 1, 4);
    builder.addOffset(offset);
    return builder.endVector();
  };
  const means = floats(mean);
  const stds = floats(std);
  builder.startObject(2); // NormalizationOptions
  builder.addFieldOffset(0, means, 0);
  builder.addFieldOffset(1, stds, 0);
  const options = builder.endObject();
  builder.startObject(2); // ProcessUnit: a union, its kind (1 = NormalizationOptions) and its value
  builder.addFieldInt8(0, 1, 0);
  builder.addFieldOffset(1, options, 0);
  const processUnits = tables(builder.endObject());
  builder.startObject(2); // ImageProperties: colour space 1 = RGB
  builder.addFieldInt8(0, 1, 0);
  const imageProperties = builder.endObject();
  builder.startObject(3); // Content: a union, its kind (2 = ImageProperties) and its value
  builder.addFieldInt8(0, 2, 0);
  builder.addFieldOffset(1, imageProperties, 0);
  const content = builder.endObject();
  const name = builder.createString("image");
  builder.startObject(7); // TensorMetadata
  builder.addFieldOffset(0, name, 0);
  builder.addFieldOffset(3, content, 0);
  builder.addFieldOffset(4, processUnits, 0);
  const inputs = tables(builder.endObject());
  builder.startObject(10); // SubGraphMetadata
  builder.addFieldOffset(2, inputs, 0);
  const subgraphs = tables(builder.endObject());
  const parserVersion = builder.createString("1.0.0");
  builder.startObject(8); // ModelMetadata
  builder.addFieldOffset(3, subgraphs, 0);
  builder.addFieldOffset(7, parserVersion, 0);
  builder.finish(builder.endObject(), "M001");
  return builder.asUint8Array();
}
