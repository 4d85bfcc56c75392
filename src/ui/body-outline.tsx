// A plain outline with marks on it. It repeats what the words beside it say: nothing is known from the picture alone.
import { useId } from "preact/hooks";
import "./body-outline.css";

export interface BodyOutlineMark {
  xMm: number;
  yMm: number;
  label: string;
  /** here: ring and cross. rest and old: a dot or an open ring with its days under it. never: hatching. */
  kind: "here" | "rest" | "never" | "old";
  /** Size of a "never" place; a small one where it is missing. */
  radiusMm?: number;
}

export interface BodyOutlineProps {
  region: "belly" | "thigh" | "arm" | "buttock";
  widthMm: number;
  heightMm: number;
  marks: readonly BodyOutlineMark[];
  /** Said to a screen reader in place of the picture. */
  title: string;
  /** Words at the edges, so that left is read and not guessed. */
  edges?: { left: string; right: string };
}

export function BodyOutline({ region, widthMm, heightMm, marks, title, edges }: BodyOutlineProps) {
  // Ids of two drawings on one page must differ; a colon would break url(#...).
  const hatch = `hatch-${useId().replaceAll(":", "")}`;
  const size = Math.max(widthMm, heightMm) / 16;
  const margin = size * 1.6;
  return (
    <svg
      class="body-outline"
      role="img"
      aria-label={title}
      viewBox={`${-margin} ${-margin} ${widthMm + 2 * margin} ${heightMm + 2 * margin}`}
      font-size={size}
      stroke-width={size / 7}
    >
      <defs>
        <pattern id={hatch} width={size / 3} height={size / 3} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path class="outline-hatch" d={`M${size / 6} 0v${size / 3}`} />
        </pattern>
      </defs>
      <path class="outline-skin" d={outline(region, widthMm, heightMm)} />
      {edges && (
        <>
          <text class="outline-edge" x={-margin * 0.6} y={-margin * 0.35}>
            {edges.left}
          </text>
          <text class="outline-edge outline-edge-right" x={widthMm + margin * 0.6} y={-margin * 0.35}>
            {edges.right}
          </text>
        </>
      )}
      {/* The next spot is drawn last, on top of all others. */}
      {[...marks]
        .sort((a, b) => Number(a.kind === "here") - Number(b.kind === "here"))
        .map((mark) => (
          <Mark key={`${mark.kind} ${mark.xMm} ${mark.yMm} ${mark.label}`} mark={mark} size={size} hatch={hatch} />
        ))}
    </svg>
  );
}

function Mark({ mark, size, hatch }: { mark: BodyOutlineMark; size: number; hatch: string }) {
  const { xMm: x, yMm: y, kind, label } = mark;
  if (kind === "never") {
    const radius = mark.radiusMm ?? size * 0.6;
    return (
      <g class="outline-mark outline-never">
        <circle class="outline-paper" cx={x} cy={y} r={radius} />
        <circle cx={x} cy={y} r={radius} fill={`url(#${hatch})`} />
        <Label x={x} y={radius < size * 1.4 ? y + radius + size * 0.7 : y} text={label} />
      </g>
    );
  }
  if (kind === "here") {
    const ring = size * 1.2;
    return (
      <g class="outline-mark outline-here">
        <circle class="outline-paper" cx={x} cy={y} r={ring} />
        <path d={`M${x - ring * 1.4} ${y}H${x + ring * 1.4}M${x} ${y - ring * 1.4}V${y + ring * 1.4}`} />
        <Label x={x} y={y + ring * 2.2} text={label} />
      </g>
    );
  }
  const dot = size / 4;
  return (
    <g class={`outline-mark outline-${kind}`}>
      <circle cx={x} cy={y} r={dot} />
      <Label x={x} y={y + size} text={label} />
    </g>
  );
}

function Label({ x, y, text }: { x: number; y: number; text: string }) {
  return (
    <text class="outline-label" x={x} y={y} text-anchor="middle" dominant-baseline="central">
      {text}
    </text>
  );
}

/** A few curves: enough to know the front of a belly or a thigh, the back of an arm or a buttock. */
function outline(region: BodyOutlineProps["region"], w: number, h: number): string {
  switch (region) {
    case "belly":
      // Widest at the navel, where the farthest spots are.
      return `M${w * 0.06} 0Q${w * -0.06} ${h / 2} ${w * 0.06} ${h}H${w * 0.94}Q${w * 1.06} ${h / 2} ${w * 0.94} 0Q${w / 2} ${h * -0.08} ${w * 0.06} 0Z`;
    case "thigh":
      return `M0 0Q${w * -0.06} ${h * 0.4} ${w * 0.14} ${h}H${w * 0.86}Q${w * 1.06} ${h * 0.4} ${w} 0Z`;
    case "arm":
      return `M0 ${h * 0.12}Q${w * 0.1} 0 ${w / 2} 0Q${w * 0.9} 0 ${w} ${h * 0.12}L${w * 0.88} ${h}H${w * 0.12}Z`;
    case "buttock":
      return `M0 0H${w}V${h * 0.6}Q${w} ${h} ${w / 2} ${h}Q0 ${h} 0 ${h * 0.6}Z`;
  }
}
