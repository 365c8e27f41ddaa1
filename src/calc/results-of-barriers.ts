import type { Known } from "../cite/known.ts";
import type { Path } from "../diagnostics/path.ts";

/** The two barriers of each part of the well's life, and what single failures bring. */
export interface BarrierResults {
	/** In the order that the well goes through them. */
	readonly phases: readonly BarrierPhaseResults[];
	readonly failures: readonly SingleFailureResults[];
}

export type BarrierPhase = "drilling" | "cementing" | "treating" | "producing" | "shut in";

export interface BarrierPhaseResults {
	/** `drilling-intermediate`, `treating`. */
	readonly id: string;
	readonly phase: BarrierPhase;
	/** Of drilling the hole, of cementing the string. */
	readonly of?: string;
	readonly primary: readonly BarrierElementResults[];
	readonly secondary: readonly BarrierElementResults[];
	/** Two where gas, oil or pressure above normal may flow, else one. */
	readonly required: Known<"count">;
	/** Barriers of which no element is known not to hold; an element not stated is counted as if it held, and named. */
	readonly standing: Known<"count">;
	/** Below the number required. */
	readonly short: Known<"count">;
}

type BarrierElement =
	| "fluid column"
	| "casing"
	| "casing cement"
	| "wellhead"
	| "preventers"
	| "diverter"
	| "floats"
	| "plug"
	| "packer"
	| "tubing"
	| "safety valve"
	| "production tree";

/** `holds` as far as is known; `not stated` where the definition is silent; else why it does not count. */
type BarrierState =
	| "holds"
	| "not stated"
	| "lighter than pore pressure"
	| "no cement"
	| "rated below the pressure"
	| "taken out";

export interface BarrierElementResults {
	readonly element: BarrierElement;
	/** Whose it is. */
	readonly string?: string;
	/** Shoe, top of cement, packer. */
	readonly depth?: Known<"measured-depth">;
	/** Of a fluid. */
	readonly density?: Known<"density">;
	readonly rating?: Known<"pressure">;
	/** As recorded, else as planned. */
	readonly test?: Known<"pressure">;
	readonly tested: boolean;
	readonly date?: string;
	readonly verified_by?: string;
	readonly state: BarrierState;
	/** Where it may be stated, if it is not. */
	readonly at?: Path;
}

export type SingleFailure = "treated-string" | "hanger-seal" | "floats" | "packer" | "tubing";

/** One element gives way: what that brings onto what is behind it. */
export interface SingleFailureResults {
	readonly id: string;
	readonly failure: SingleFailure;
	/** Whose element fails. */
	readonly string: string;
	/** What then holds: a string, the wellhead, the line to the cementing head. */
	readonly held_by: string;
	readonly load: Known<"pressure" | "pressure-difference">;
	readonly rating?: Known<"pressure">;
	readonly factor?: Known<"ratio">;
	/** Where a valve lets it out: at what pressure, and the factor then. */
	readonly relief?: Known<"pressure">;
	readonly factor_relieved?: Known<"ratio">;
}
