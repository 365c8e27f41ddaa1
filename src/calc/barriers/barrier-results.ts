import { constant, type Known, type KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { CasingString, Hole, Well } from "../../well/well.ts";
import { openRock } from "../casing/loads/open-rock.ts";
import { maybe } from "../gaps.ts";
import type {
	BarrierElementResults,
	BarrierPhase,
	BarrierPhaseResults,
	BarrierResults,
	SingleFailureResults,
} from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import { barriersShort, barriersStanding } from "./barrier-formulas.ts";
import {
	type Before,
	casingElement,
	cementElement,
	floatElement,
	fluidElement,
	preventerElement,
	unstated,
	wellheadElement,
} from "./elements.ts";
import { singleFailures } from "./failures.ts";
import { withStated } from "./stated.ts";

type Element = BarrierElementResults;

/** A phase before it is counted. */
interface Derived {
	readonly phase: BarrierPhase;
	readonly of?: string;
	readonly primary: readonly Element[];
	readonly secondary: readonly Element[];
	readonly required: 1 | 2;
}

const D010 = cite("norsok-d010", "number of barriers by source of inflow; from memory");
const HOLDS = constant("count", 1, "element that holds, or is not stated", cite("definition"));
const FAILS = constant("count", 0, "element that does not hold", cite("definition"));

/** Pore pressure of normally pressured rock: native water of 0.465 psi/ft. */
const NORMAL = 0.465 / 0.052;

/**
 * Primary and secondary barrier of each part of the well's life, from what the definition states of its strings, cement,
 * mud, wellhead, preventers and packer, and of elements stated apart; and what single failures bring.
 *
 * The hole of the outermost string has no casing to close in on and is not counted.
 */
export const barrierResults = (well: Well, path: KnownTable, before: Before): BarrierResults => {
	const failures = singleFailures(well, path, before);
	return {
		phases: [
			...whileDrilling(well, path, before),
			...whileTreating(well, before, failures),
			...whileProducing(well, before),
		].map((derived) => counted(withStated(well, derived))),
		failures,
	};
};

const counted = ({ phase, of, primary, secondary, required }: Derived): BarrierPhaseResults => {
	const held = (elements: readonly Element[]): readonly Known<"count">[] =>
		elements.map(({ state }) => (state === "holds" || state === "not stated" ? HOLDS : FAILS));
	const asked = constant(
		"count",
		required,
		required === 2 ? "gas, oil or pressure above normal may flow" : "normally pressured, no gas or oil",
		D010,
	);
	const standing = barriersStanding.of({ primary: held(primary), secondary: held(secondary) });
	return {
		id: of === undefined ? phase.replace(" ", "-") : `${phase}-${of}`,
		phase,
		...maybe("of", of),
		primary,
		secondary,
		required: asked,
		standing,
		short: barriersShort.of({ required: asked, standing }),
	};
};

/** Whether gas, oil or pressure above normal stands open below a shoe. */
const mayFlow = (well: Well, path: KnownTable, outer: CasingString, hole: Hole): boolean => {
	const open = openRock(well, path, tvdAt(path, outer.shoe), hole).map(({ formation }) => formation);
	return open.some(
		({ flowZone, target, porePressure }) =>
			target || flowZone === "gas" || flowZone === "oil" || (porePressure?.value ?? 0) > NORMAL,
	);
};

/** The string that a hole is drilled out of: the deepest set before it. */
const drilledOutOf = (well: Well, hole: Hole): CasingString | undefined =>
	well.strings.findLast(
		(string) => string.kind !== "tieback" && string.hole.bottom.value < hole.bottom.value,
	);

const whileDrilling = (well: Well, path: KnownTable, before: Before): readonly Derived[] =>
	well.holes.flatMap((hole): Derived[] => {
		const outer = drilledOutOf(well, hole);
		if (outer === undefined) return [];
		const required = mayFlow(well, path, outer, hole) ? 2 : 1;
		const fluid = fluidElement(well, hole, before);
		const behind = [
			casingElement(well, outer, before),
			cementElement(well, outer, before),
			...(required === 2 || well.wellhead?.drilling !== undefined ? [wellheadElement(well, "drilling")] : []),
			...closing(well, outer, required),
		];
		const job = well.strings.find((string) => string.hole.id === hole.id && string.cement !== undefined);
		return [
			{ phase: "drilling", of: hole.id, primary: [fluid], secondary: behind, required },
			...(job === undefined
				? []
				: [
						{
							phase: "cementing" as const,
							of: job.id,
							primary: [fluid, { ...cementElement(well, job, before), tested: false }],
							secondary: [...behind, floatElement(well, job)],
							required: required as 1 | 2,
						},
					]),
		];
	});

/** Where one barrier is enough a diverter, or nothing, may stand in the place of preventers. */
const closing = (well: Well, outer: CasingString, required: 1 | 2): readonly Element[] => {
	const preventers = preventerElement(well, outer);
	return required === 2 || preventers.state === "holds" ? [preventers] : [];
};

/** The string and those that it hangs in, up to one that reaches the surface. */
const toSurface = (well: Well, string: CasingString): readonly CasingString[] => {
	const tied = well.strings.some(({ kind }) => kind === "tieback");
	const within = well.strings.find(({ id }) => id === string.within);
	return string.kind !== "liner" || tied || within === undefined
		? [string]
		: [string, ...toSurface(well, within)];
};

const outsideOf = (well: Well, strings: readonly CasingString[]): CasingString | undefined => {
	const outermost = strings.at(-1);
	return well.strings.find(({ id }) => id === outermost?.within);
};

const steelAndCement = (well: Well, strings: readonly CasingString[], before: Before): readonly Element[] => [
	...strings.map((string) => casingElement(well, string, before)),
	...strings.slice(0, 1).map((string) => cementElement(well, string, before)),
];

const whileTreating = (
	well: Well,
	before: Before,
	failures: readonly SingleFailureResults[],
): readonly Derived[] => {
	const { stimulation } = well;
	const treated = well.strings.find(({ id }) => id === stimulation?.treatedThrough);
	if (stimulation === undefined || treated === undefined) return [];
	const strings = toSurface(well, treated);
	const head = wellheadElement(well, "stimulation");
	if (stimulation.treatingString !== undefined)
		return [
			{
				phase: "treating",
				primary: [unstatedHolding("tubing", treated.id), ...steelAndCement(well, [treated], before), head],
				secondary: [
					...strings.map((string) => casingElement(well, string, before)),
					wellheadElement(well, "drilling"),
				],
				required: 2,
			},
		];
	const outer = outsideOf(well, strings);
	const leak = failures.find(({ failure }) => failure === "treated-string");
	const bears = leak?.factor_relieved ?? leak?.factor;
	const around =
		outer === undefined
			? []
			: steelAndCement(well, [outer], before).map((element) =>
					element.element === "casing" && bears !== undefined && bears.value < 1
						? { ...element, state: "rated below the pressure" as const }
						: element,
				);
	return [
		{
			phase: "treating",
			primary: [...steelAndCement(well, strings, before), head],
			secondary: outer === undefined ? [] : [...around, wellheadElement(well, "drilling")],
			required: 2,
		},
	];
};

const unstatedHolding = (element: Element["element"], string: string): Element => ({
	...unstated(element, string),
	state: "holds",
});

const whileProducing = (well: Well, before: Before): readonly Derived[] => {
	const produced = well.strings.findLast(({ kind }) => kind !== "liner");
	if (produced === undefined || (produced.production === undefined && well.stimulation === undefined))
		return [];
	const { production } = produced;
	const below = well.strings.at(-1);
	const lined = below === undefined || below === produced ? [produced] : [below, produced];
	const outer = outsideOf(well, [produced]);
	const tree = unstated("production tree");
	const barriers =
		production === undefined
			? {
					primary: [...steelAndCement(well, lined, before), tree],
					secondary:
						outer === undefined
							? []
							: [...steelAndCement(well, [outer], before), wellheadElement(well, "drilling")],
				}
			: {
					primary: [
						...steelAndCement(well, lined.slice(0, 1), before),
						{ ...unstatedHolding("packer", produced.id), depth: production.packer },
						unstated("tubing", produced.id),
						tree,
					],
					secondary: [
						...steelAndCement(well, [produced], before),
						well.wellhead?.stimulation === undefined
							? wellheadElement(well, "drilling")
							: wellheadElement(well, "stimulation"),
					],
				};
	return (["producing", "shut in"] as const).map((phase) => ({ phase, ...barriers, required: 2 }));
};
