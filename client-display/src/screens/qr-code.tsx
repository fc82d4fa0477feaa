import { create } from "qrcode";
import { useMemo } from "react";

/** The quiet zone that ISO/IEC 18004 asks for around a code, in modules. */
const quietZone = 4;

/** A QR code as one path: sharp at any size, and no image that the content policy would have to allow. */
export function QrCode({ text, label }: { readonly text: string; readonly label: string }) {
  const { path, size } = useMemo(() => {
    const { modules } = create(text, { errorCorrectionLevel: "M" });
    let drawn = "";
    for (let row = 0; row < modules.size; row++) {
      for (let column = 0; column < modules.size; column++) {
        if (modules.get(row, column) !== 0) drawn += `M${column + quietZone} ${row + quietZone}h1v1h-1z`;
      }
    }
    return { path: drawn, size: modules.size + 2 * quietZone };
  }, [text]);
  return (
    <svg className="qr-code" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label} shapeRendering="crispEdges">
      <rect width={size} height={size} fill="#ffffff" />
      <path d={path} fill="#000000" />
    </svg>
  );
}
