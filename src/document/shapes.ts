/**
 * Neutral shapes of a drawing. Lengths are points (1/72 in); the origin is the top left corner; y grows downward.
 * Colors are `#rrggbb`. There are no pattern fills and no gradients: hatching is a path of segments, clipped.
 */
export interface Stroke {
	readonly color: string;
	readonly width: number;
	/** Dash and gap lengths. */
	readonly dash?: readonly number[];
	readonly cap?: "butt" | "round" | "square";
	readonly join?: "miter" | "round" | "bevel";
}

export type Shape =
	/** SVG path data. A `clip` is path data too, and applies to this shape alone. */
	| {
			readonly kind: "path";
			readonly d: string;
			readonly fill?: string;
			readonly fillOpacity?: number;
			readonly evenOdd?: boolean;
			readonly stroke?: Stroke;
			readonly clip?: string;
	  }
	| {
			readonly kind: "line";
			readonly x1: number;
			readonly y1: number;
			readonly x2: number;
			readonly y2: number;
			readonly stroke: Stroke;
	  }
	| {
			readonly kind: "text";
			readonly x: number;
			/** Baseline. */
			readonly y: number;
			readonly text: string;
			readonly size: number;
			readonly color: string;
			readonly weight?: "regular" | "semibold" | "bold";
			readonly italic?: boolean;
			readonly anchor?: "start" | "middle" | "end";
			/** Degrees clockwise about (x, y). */
			readonly rotate?: number;
			/** Key of the value printed, where the text is one. */
			readonly key?: string;
	  }
	| {
			readonly kind: "group";
			readonly dx: number;
			readonly dy: number;
			readonly children: readonly Shape[];
			readonly name?: string;
	  };

/** Something that a drawing had no room to say. */
export interface Undrawn {
	readonly name: string;
	readonly says: string;
}

export interface Drawing {
	readonly id: string;
	readonly width: number;
	readonly height: number;
	readonly shapes: readonly Shape[];
	/** Short name, as a figure caption begins. */
	readonly title: string;
	/** What a reader who cannot see it needs to know, made from the data. */
	readonly alternative: string;
	/** "Depth to scale; widths are not to scale", or the like; every drawing says one or the other. */
	readonly scale: string;
	/** What it had no room for, to stand in a table beside it. */
	readonly undrawn?: readonly Undrawn[];
}
