import type { PaperContext } from "../context.ts";
import { asGiven, namedInWords } from "../parts/part.ts";
import { isWaterShownProtected, openOnWater } from "../water-verdict.ts";
import { about, liquid, say, sayDate, sayText } from "./say.ts";
import { sealedZones, sealWords } from "./seals.ts";

/** Words about water: where it is, what lies between it and the treated rock, and how that is known. */
export const waterWords = (context: PaperContext): Record<string, unknown> => {
	const { well, results } = context;
	const { isolation } = results;
	const label = context.words.label;
	const protectedWater = well.geology.protectedWater;
	const protecting = well.strings.find((string) => string.id === isolation.protecting_string);
	const columns = isolation.cement_at_protected_water ?? [];
	const seals = isolation.zones.find(({ kind }) => kind === "base of protected water")?.seals ?? [];
	const hole = protecting?.hole;
	const wells = isolation.neighbor_wells.filter((neighbor) => neighbor.bottom !== undefined);
	const deepest = wells.toSorted((a, b) => (b.bottom?.value ?? 0) - (a.bottom?.value ?? 0))[0];
	const neighbor = well.neighbors.find((n) => n.id === deepest?.id);
	const surveyed = well.neighbors.flatMap((place) =>
		(place.surveyed ?? []).map((entry) => ({
			name: place.name,
			distance: say(context, entry.distance),
			from: asGiven(context, entry.from),
		})),
	);
	const base = results.geology.protected_water_base?.tvd.value;
	const bare = isolation.gaps.find(
		({ against, top, bottom }) =>
			base !== undefined && against !== "rock" && top.tvd.value < base && base < bottom.tvd.value,
	);
	const cracks =
		results.stimulation?.fractures?.models.toSorted((a, b) => a.height.value - b.height.value) ?? [];
	const cemented = protecting && results.cement[protecting.id];
	return {
		has_protected_water: protectedWater !== undefined,
		protected_base: say(context, results.geology.protected_water_base?.below_ground),
		protected_base_by: sayText(protectedWater?.determinedBy),
		protected_base_reference: sayText(protectedWater?.reference),
		protected_base_dated: sayDate(context, protectedWater?.dated),
		// What the public reads of protection follows the verdicts: an open one takes the reassuring words out.
		water_protected: isWaterShownProtected(context),
		water_open: [...new Set(openOnWater(context).map(({ check }) => check))].map((check) =>
			label(`water_open.${check}`),
		),
		protecting_string: protecting === undefined ? false : namedInWords(context, protecting.id),
		protecting_shoe: say(context, protecting ? results.casing[protecting.id]?.shoe.below_ground : undefined),
		shoe_below_water: say(context, isolation.shoe_below_protected_water),
		separation: about(context, isolation.protected_water_to_top_perforation),
		separation_exact: say(context, isolation.protected_water_to_top_perforation),
		separation_miles:
			context.units === "field"
				? about(context, isolation.protected_water_to_top_perforation, 2, "mi")
				: false,
		crack_least: about(context, cracks[0]?.height),
		crack_most: about(context, cracks.at(-1)?.height),
		crack_gap: about(context, results.stimulation?.fractures?.least_below_protected_water),
		confining_counts: isBedCountedOn(context),
		confining_bed: sayText(isolation.confining[0]?.name),
		confining_thickness: about(context, isolation.confining[0]?.thickness),
		bare_pipe: bare === undefined ? false : namedInWords(context, bare.string),
		steel_layers: say(context, isolation.steel_at_protected_water),
		cement_layers: { kind: "quantity", dimension: "count", value: columns.length },
		cement_evidence: columns.map((column) => {
			const seal = seals.find(({ string }) => string === column.string);
			return {
				string: namedInWords(context, column.string),
				evidence: seal === undefined ? label(`evidence.${column.evidence}`) : sealWords(context, seal),
			};
		}),
		sealed_zones: sealedZones(context),
		any_seal_recorded: isolation.zones.some((zone) => zone.seals.some(({ state }) => state !== "planned")),
		all_planned: columns.length > 0 && columns.every((column) => column.evidence === "planned"),
		surface_fluid: sayText(asGiven(context, hole?.fluid?.kind)),
		protecting_wait: say(context, protecting?.cement?.waitOnCement, { unit: "hr", decimals: 0 }),
		protecting_to_surface: protecting ? results.cement[protecting.id]?.to_surface === true : false,
		protecting_sacks: say(context, protecting ? results.cement[protecting.id]?.sacks : undefined),
		protecting_gap: liquid(context, cemented?.annulus_volume),
		protecting_back:
			protecting?.cement?.actual === undefined && cemented?.placement?.returns_at_measure !== undefined,
		protecting_returned: liquid(context, positive(protecting?.cement?.actual?.returnsToSurface)),
		protecting_strong_after: say(context, cemented?.setting?.strength_reached, { unit: "hr", decimals: 0 }),
		if_returns_stop: sayText(protecting?.cement?.ifReturnsStop?.replace(/\.$/u, "")),
		has_water_wells: wells.length > 0,
		deepest_water_well: deepest?.name ?? false,
		deepest_water_well_depth: say(context, neighbor?.depth?.depth),
		deepest_water_well_gap: about(context, deepest?.above_top_perforation),
		deepest_water_well_gap_exact: say(context, deepest?.above_top_perforation),
		has_surveyed: surveyed.length > 0,
		surveyed,
		water_zones: well.geology.water.map((zone) => {
			const mark = results.geology.water.find((entry) => entry.id === zone.id);
			return {
				name: zone.name,
				top: say(context, mark?.top.below_ground),
				base: say(context, mark?.base.below_ground),
				use: sayText(zone.use),
			};
		}),
	};
};

/** Nothing that came back is no volume to tell. */
const positive = <K extends { readonly value: number }>(known: K | undefined): K | undefined =>
	known !== undefined && known.value > 0 ? known : undefined;

/** A bed is not told as what slows fluid where the models break through it, or where it is thinner than practice asks. */
const isBedCountedOn = ({ judgement }: PaperContext): boolean =>
	judgement.findings.every(
		({ cite, verdict }) => cite.rule !== "practice.isolation.confining-bed" || verdict === "met",
	);
