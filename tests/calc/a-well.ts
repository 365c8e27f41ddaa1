import { minimumCurvaturePath } from "../../src/calc/trajectory/path.ts";
import type { KnownTable } from "../../src/cite/known.ts";
import type { CasingString, CementJob, Hole, PipeSection, Slurry, Well } from "../../src/well/well.ts";
import { given, stationTable } from "./given.ts";

/** A vertical path, long enough for every test well. */
export const straightDown: KnownTable = minimumCurvaturePath.of({
	stations: stationTable([
		[0, 0, 0],
		[30000, 0, 0],
	]),
	TD: given("measured-depth", 30000),
	Avs: given("angle", 0),
});

export const md = (feet: number) => given("measured-depth", feet);
export const inches = (d: number) => given("diameter", d);

export const hole = (
	id: string,
	diameter: number,
	top: number,
	bottom: number,
	more: { readonly washout?: number; readonly mud?: number; readonly air?: boolean } = {},
): Hole => ({
	id,
	diameter: inches(diameter),
	top: md(top),
	bottom: md(bottom),
	...(more.washout === undefined ? {} : { washout: given("share", more.washout) }),
	...(more.mud !== undefined
		? {
				fluid: {
					kind: "mud",
					density: given("density", more.mud),
					plasticViscosity: given("plastic-viscosity", 15),
					yieldPoint: given("yield-point", 10),
				},
			}
		: more.air === true
			? { fluid: { kind: "air" } }
			: {}),
});

/** A run of pipe as `[outside diameter, inside diameter, bottom]`; each begins where the last ended. */
export type Run = readonly [od: number, id: number, bottom: number];

const sectionsOf = (top: number, runs: readonly Run[]): readonly PipeSection[] =>
	runs.map(([od, id, bottom], i) => ({
		number: i + 1,
		outsideDiameter: inches(od),
		insideDiameter: inches(id),
		top: md(runs[i - 1]?.[2] ?? top),
		bottom: md(bottom),
	})) as unknown as readonly PipeSection[];

export const string = (
	id: string,
	inHole: Hole,
	top: number,
	runs: readonly Run[],
	more: Partial<CasingString> = {},
): CasingString =>
	({
		id,
		kind: "casing",
		hole: inHole,
		top: md(top),
		shoe: md(runs.at(-1)?.[2] ?? top),
		sections: sectionsOf(top, runs),
		floats: [],
		centralizers: [],
		designFactors: { burst: given("ratio", 1.1) },
		...more,
	}) as unknown as CasingString;

export const slurry = (
	id: string,
	top: number,
	bottom: number,
	more: { readonly excess?: number; readonly density?: number } = {},
): Slurry => ({
	id,
	role: id,
	top: md(top),
	bottom: md(bottom),
	excess: given("share", more.excess ?? 0),
	density: given("density", more.density ?? 15.6),
	yield: given("slurry-yield", 1.18),
	water: given("water-requirement", 5.2),
	plasticViscosity: given("plastic-viscosity", 30),
	yieldPoint: given("yield-point", 12),
	strength: [{ value: given("pressure", 500), after: given("duration", 480) }],
});

export const job = (slurries: readonly Slurry[], more: Partial<CementJob> = {}): CementJob => ({
	volumeBasis: "washed-out hole",
	slurries,
	plugs: [],
	topMethod: "calculated",
	...more,
});

/** A well of holes and strings, its datum 20 ft above the ground and 22 ft above the hanger. */
export const well = (
	holes: readonly Hole[],
	strings: readonly CasingString[],
	more: Partial<Well> = {},
): Well =>
	({
		datum: {
			name: "rotary table",
			aboveGround: given("length", 20),
			groundElevation: given("elevation", 1000),
			casingHanger: md(22),
			groundLevel: md(20),
		},
		geology: { formations: [], water: [] },
		site: { jurisdictions: [] },
		holes,
		strings,
		neighbors: [],
		offsetWells: [],
		offsetPaths: { paths: [] },
		conditions: [],
		schedule: [],
		assumptions: [],
		...more,
	}) as unknown as Well;
