import type { Known, KnownTable } from "../../cite/known.ts";
import type { CasingString, Formation, Hole, Well } from "../../well/well.ts";
import { maybe } from "../gaps.ts";
import type { AnnulusGap, BondLogResults, Results, ZoneIsolation, ZonePhase, ZoneSeal } from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import { cementEvidence, isVerified, steelEvidence } from "./evidence.ts";
import { isPoorlyBonded, sealsAcross } from "./seal.ts";
import { layersSpanning, verticalSeparation } from "./separation.ts";

type Tvd = Known<"true-vertical-depth">;
type Built = Pick<Results, "casing" | "cement">;

interface Zone extends Pick<ZoneIsolation, "id" | "name" | "kind" | "top" | "base"> {
	readonly formation?: Formation;
	/** Top of what is counted: pipe begins at the hanger, a foot or two below ground. */
	readonly from: Tvd;
}

/** Water and rock that may flow, as far as the well reaches, from the surface down. */
const zonesOf = ({ geology, strings }: Well, { casing }: Built, deepest: Tvd): readonly Zone[] => {
	const [hanger] = strings
		.flatMap(({ id, kind }) => (kind === "casing" ? (casing[id]?.top.tvd ?? []) : []))
		.sort((a, b) => b.value - a.value);
	const reached = (base: Tvd): Tvd => (base.value < deepest.value ? base : deepest);
	const base = geology.protectedWater?.base;
	const zones: readonly Omit<Zone, "from">[] = [
		...geology.water.map((zone) => ({
			...zone,
			kind: "water" as const,
			base: reached(zone.base),
		})),
		...(base === undefined
			? []
			: [
					{
						id: "protected-water",
						name: "Base of protected water",
						kind: "base of protected water" as const,
						top: base,
						base,
					},
				]),
		...geology.formations
			.filter(({ flowZone, target }) => flowZone !== undefined || target)
			.map((formation) => ({
				id: formation.id,
				name: formation.name,
				kind: formation.target ? ("target" as const) : ("flow zone" as const),
				top: formation.top,
				base: formation.base === undefined ? formation.top : reached(formation.base),
				formation,
			})),
	];
	return zones
		.filter(({ top }) => top.value < deepest.value)
		.map((zone) => ({
			...zone,
			from:
				hanger !== undefined && zone.top.value < hanger.value && hanger.value < zone.base.value
					? hanger
					: zone.top,
		}))
		.sort((a, b) => a.top.value - b.top.value);
};

const count = (zone: Zone, spans: readonly (readonly [Tvd, Tvd])[]): Known<"count"> =>
	layersSpanning.of({
		z_top: zone.from,
		z_base: zone.base,
		TVD_top: spans.map(([top]) => top),
		TVD_bottom: spans.map(([, bottom]) => bottom),
	});

/** Layers across a zone with the strings that stand by then. */
const across = (
	zone: Zone,
	{ casing, cement }: Built,
	strings: readonly CasingString[],
	seals: readonly ZoneSeal[],
) => {
	const pipes = strings.flatMap((string) => {
		const pipe = casing[string.id];
		return pipe === undefined
			? []
			: [
					{
						span: [pipe.top.tvd, pipe.shoe.tvd] as const,
						verified: isVerified(steelEvidence(string)),
					},
				];
	});
	const columns = strings.flatMap((string) => {
		// A log that finds no bond across the zone outranks what was seen of the job elsewhere.
		const verified = isVerified(cementEvidence(string.cement?.actual)) && !isPoorlyBonded(seals, string.id);
		return (cement[string.id]?.columns ?? []).map(({ top, bottom }) => ({
			span: [top.tvd, bottom.tvd] as const,
			verified,
		}));
	});
	const spans = (list: typeof pipes) => list.map(({ span }) => span);
	return {
		steel: count(zone, spans(pipes)),
		cement: count(zone, spans(columns)),
		verified_steel: count(zone, spans(pipes.filter(({ verified }) => verified))),
		verified_cement: count(zone, spans(columns.filter(({ verified }) => verified))),
	};
};

/** Whether the fluid of a hole stands over the pore pressure of the zone: both as densities from the datum. */
const fluidOver = ({ formation }: Zone, { fluid }: Hole): ZonePhase["fluid"] => {
	if (formation === undefined) return undefined;
	const [mud, pore] = [fluid?.density, formation.porePressure];
	if (mud === undefined || pore === undefined) return "not known";
	return mud.value >= pore.value ? "holds" : "does not hold";
};

/** Each hole that reaches the zone while it is drilled, then the treatment, then production. */
const phasesOf = (
	well: Well,
	path: KnownTable,
	built: Built,
	zone: Zone,
	seals: readonly ZoneSeal[],
): readonly ZonePhase[] => {
	const drilling = well.holes.flatMap((hole, i): readonly ZonePhase[] => {
		if (tvdAt(path, hole.bottom).value <= zone.top.value) return [];
		const earlier = well.holes.slice(0, i).map(({ id }) => id);
		const set = well.strings.filter((string) => earlier.includes(string.hole.id));
		const open = tvdAt(path, hole.top).value < zone.base.value;
		return [
			{
				id: `drilling-${hole.id}`,
				phase: "drilling",
				hole: hole.id,
				...across(zone, built, set, seals),
				...(open ? { open: "hole" as const, ...maybe("fluid", fluidOver(zone, hole)) } : {}),
			},
		];
	});
	const whole = across(zone, built, well.strings, seals);
	const perforated =
		zone.kind === "target" && well.stimulation !== undefined ? { open: "perforations" as const } : {};
	return [
		...drilling,
		...(well.stimulation === undefined
			? []
			: [
					{
						id: "stimulating",
						phase: "stimulating" as const,
						...whole,
						...perforated,
					},
				]),
		{ id: "producing", phase: "producing", ...whole, ...perforated },
	];
};

/** Zones whose rock stands open in a gap: it has to lie against the rock. */
const touched = (gap: Omit<AnnulusGap, "zones">, zones: readonly Zone[]): readonly string[] =>
	gap.against !== "rock"
		? []
		: zones
				.filter(({ kind }) => kind !== "base of protected water")
				.filter(({ top, base }) => top.value < gap.bottom.tvd.value && gap.top.tvd.value < base.value)
				.map(({ id }) => id);

/** Zones with their counts, and gaps with the zones that stand open in them. */
export const zoneIsolation = (
	well: Well,
	path: KnownTable,
	built: Built,
	{
		deepest,
		gaps,
		logs,
		topPerforation,
	}: {
		readonly deepest: Tvd;
		readonly topPerforation: Tvd | undefined;
		readonly logs: readonly BondLogResults[];
		readonly gaps: readonly Omit<AnnulusGap, "zones">[];
	},
): {
	readonly zones: readonly ZoneIsolation[];
	readonly gaps: readonly AnnulusGap[];
} => {
	const zones = zonesOf(well, built, deepest);
	const open = gaps.map((gap) => ({ ...gap, zones: touched(gap, zones) }));
	return {
		gaps: open,
		zones: zones.map((zone) => {
			const seals = sealsAcross(well, path, built, logs, { top: zone.from, base: zone.base });
			return {
				id: zone.id,
				name: zone.name,
				kind: zone.kind,
				top: zone.top,
				base: zone.base,
				phases: phasesOf(well, path, built, zone, seals),
				...maybe(
					"above_perforations",
					topPerforation && verticalSeparation.of({ TVD_lower: topPerforation, TVD_upper: zone.base }),
				),
				seals,
				gaps: open.filter(({ zones: in_ }) => in_.includes(zone.id)).map(({ id }) => id),
			};
		}),
	};
};
