import type { Drawing, Shape, Stroke } from "../../document/shapes.ts";
import { FAMILY, type Face, faceFor } from "../../measure/faces.ts";
import { fontSubset } from "../../measure/font-subset.ts";

interface SvgOptions {
	/** Put a subset of the typeface into the file, so that it looks and measures the same anywhere. On unless told otherwise. */
	readonly embedFonts?: boolean;
	/** Keep the keys of values and the names of groups, by which a file is searched and compared. On unless told otherwise. */
	readonly keepNames?: boolean;
	/** Before the ids inside, where several drawings stand in one file. */
	readonly idPrefix?: string;
}

/** Characters that XML 1.0 allows (section 2.2); a lone half of a surrogate pair is none. */
const allowed = (character: string): boolean => {
	const point = character.codePointAt(0) ?? 0;
	if (point < 0x20) return point === 0x09 || point === 0x0a || point === 0x0d;
	return !(point >= 0xd800 && point <= 0xdfff) && point !== 0xfffe && point !== 0xffff;
};

/** XML text: what is not allowed left out, markup escaped. */
const escaped = (text: string): string =>
	[...text]
		.filter(allowed)
		.join("")
		.replaceAll("&", "&amp;")
		.replaceAll("<", "&lt;")
		.replaceAll(">", "&gt;")
		.replaceAll('"', "&quot;");

const cut = (value: number): string => {
	const rounded = Math.round(value * 100) / 100;
	return String(Object.is(rounded, -0) ? 0 : rounded);
};

/** Path data with its decimals cut to hundredths of a point. */
const cutPath = (d: string): string =>
	d.replace(/-?\d*\.\d{3,}(?:e[-+]?\d+)?|-?\d+(?:\.\d+)?e[-+]?\d+/gi, (number) => {
		const text = cut(Number(number));
		return text.startsWith("-") ? text : ` ${text}`;
	});

const attributes = (pairs: Readonly<Record<string, string | number | undefined>>): string =>
	Object.entries(pairs)
		.filter(([, value]) => value !== undefined)
		.map(([name, value]) => ` ${name}="${typeof value === "number" ? cut(value) : escaped(value ?? "")}"`)
		.join("");

const strokeAttributes = (stroke: Stroke | undefined): Record<string, string | number | undefined> =>
	stroke === undefined
		? {}
		: {
				stroke: stroke.color,
				"stroke-width": stroke.width,
				"stroke-dasharray": stroke.dash?.map(cut).join(" "),
				"stroke-linecap": stroke.cap,
				"stroke-linejoin": stroke.join,
			};

const faceOf = (shape: Extract<Shape, { kind: "text" }>): Face => faceFor(shape.weight, shape.italic);

/** Clip paths by their data: each is defined once, before the shapes. */
const clipsOf = (shapes: readonly Shape[], found: Map<string, number> = new Map()): Map<string, number> => {
	for (const shape of shapes) {
		if (shape.kind === "group") clipsOf(shape.children, found);
		else if (shape.kind === "path" && shape.clip !== undefined && !found.has(shape.clip))
			found.set(shape.clip, found.size + 1);
	}
	return found;
};

const textsOf = (shapes: readonly Shape[]): Extract<Shape, { kind: "text" }>[] =>
	shapes.flatMap((shape) =>
		shape.kind === "group" ? textsOf(shape.children) : shape.kind === "text" ? [shape] : [],
	);

/** One rule for each face in use, with the face's characters of this drawing inside it. */
const fontRules = (shapes: readonly Shape[]): string => {
	const texts = new Map<Face, string[]>();
	for (const shape of textsOf(shapes)) {
		const face = faceOf(shape);
		texts.set(face, [...(texts.get(face) ?? []), shape.text]);
	}
	return [...texts]
		.map(([face, used]) => {
			const bytes = Buffer.from(fontSubset(face, used)).toString("base64");
			return `@font-face{font-family:"${FAMILY}";font-weight:${face.css};font-style:${face.italic ? "italic" : "normal"};src:url(data:font/ttf;base64,${bytes})format("truetype")}`;
		})
		.join("\n");
};

const shapeText = (shape: Shape, clip: (d: string) => string, named: boolean): string => {
	switch (shape.kind) {
		case "path":
			return `<path${attributes({
				d: cutPath(shape.d),
				fill: shape.fill ?? "none",
				"fill-opacity": shape.fillOpacity,
				"fill-rule": shape.evenOdd === true ? "evenodd" : undefined,
				"clip-path": shape.clip === undefined ? undefined : `url(#${clip(shape.clip)})`,
				...strokeAttributes(shape.stroke),
			})}/>`;
		case "line":
			return `<line${attributes({ x1: shape.x1, y1: shape.y1, x2: shape.x2, y2: shape.y2, ...strokeAttributes(shape.stroke) })}/>`;
		case "text": {
			const face = faceOf(shape);
			return `<text${attributes({
				x: shape.x,
				y: shape.y,
				"font-size": shape.size,
				"font-weight": face.css === 400 ? undefined : face.css,
				"font-style": face.italic ? "italic" : undefined,
				"text-anchor": shape.anchor === "start" ? undefined : shape.anchor,
				fill: shape.color,
				transform:
					shape.rotate === undefined
						? undefined
						: `rotate(${cut(shape.rotate)} ${cut(shape.x)} ${cut(shape.y)})`,
				"data-key": named ? shape.key : undefined,
			})}>${escaped(shape.text)}</text>`;
		}
		case "group": {
			const moved = shape.dx !== 0 || shape.dy !== 0;
			const open = `<g${attributes({
				transform: moved ? `translate(${cut(shape.dx)} ${cut(shape.dy)})` : undefined,
				"data-name": named ? shape.name : undefined,
			})}>`;
			return [open, ...shape.children.map((child) => shapeText(child, clip, named)), "</g>"].join("\n");
		}
	}
};

/**
 * A drawing as a stand-alone SVG file: titled and described for a reader who cannot see it, its typeface inside, decimals
 * cut to hundredths of a point. The same drawing gives the same bytes.
 */
export const renderSvg = (drawing: Drawing, options: SvgOptions = {}): string => {
	const { id, width, height, title, alternative, scale, shapes } = drawing;
	const name = `${options.idPrefix ?? ""}${id.replaceAll(/[^A-Za-z0-9_-]/g, "-")}`;
	const clips = clipsOf(shapes);
	const clip = (d: string) => `${name}-clip-${clips.get(d) ?? 0}`;
	const fonts = options.embedFonts === false ? "" : fontRules(shapes);
	return [
		`<svg xmlns="http://www.w3.org/2000/svg" width="${cut(width)}pt" height="${cut(height)}pt" viewBox="0 0 ${cut(width)} ${cut(height)}" role="img" aria-labelledby="${name}-title ${name}-desc" font-family="'${FAMILY}', 'Source Sans Pro', Helvetica, Arial, sans-serif">`,
		`<title id="${name}-title">${escaped(title)}</title>`,
		`<desc id="${name}-desc">${escaped(`${alternative} ${scale}`)}</desc>`,
		...(fonts === "" ? [] : [`<style>${fonts}</style>`]),
		...(clips.size === 0
			? []
			: [
					"<defs>",
					...[...clips.keys()].map(
						(d) => `<clipPath id="${clip(d)}"><path d="${escaped(cutPath(d))}"/></clipPath>`,
					),
					"</defs>",
				]),
		`<rect width="${cut(width)}" height="${cut(height)}" fill="#ffffff"/>`,
		...shapes.map((shape) => shapeText(shape, clip, options.keepNames !== false)),
		"</svg>",
		"",
	].join("\n");
};
