import { formula, tableFormula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import { quantity } from "../../../units/quantity.ts";
import { placeAt } from "../../trajectory/at-depth.ts";
import { pathStationsOf } from "../../trajectory/path.ts";
import { STEEL_MODULUS } from "../triaxial.ts";
import { loadSectionsOf } from "./load-sections.ts";
import { profileAt } from "./profiles.ts";
import { laidOut, slidingForce } from "./soft-string.ts";

/*
 * Where pipe that is let down is pressed so hard that it coils against the wall. From there on its drag grows with the
 * square of the push, which the soft string does not know of: what is said of its weight on the hook holds no longer.
 */

/** Effective compression that coils pipe of weight `w` in mud in a hole at inclination `I`, `r` off its wall [lbf]. */
export const helicalBucklingForce = formula({
	id: "casing/helical-buckling-force",
	name: "Compression of helical buckling",
	expression: "F = 2 (2√2 − 1) √(E J w sin I / r), at least 5.55 (E J w²)^⅓; J = π (D⁴ − d⁴) / 64",
	source: cite("wu-juvkam-wold-1995", "inclined hole; vertical hole as the least; from memory"),
	inputs: { D: "diameter", t: "diameter", w: "linear-weight", r: "diameter", I: "angle" },
	gives: "force",
	validity: "straight hole, frictionless wall; pipe heavier than what it displaces; r above zero",
	compute: ({ D, t, w, r, I }) => {
		const perInch = w / 12;
		if (!(perInch > 0) || !(r > 0)) return Number.NaN;
		const stiffness = STEEL_MODULUS * (Math.PI / 64) * (D ** 4 - (D - 2 * t) ** 4);
		const lying = Math.max(0, Math.sin((I * Math.PI) / 180));
		const inclined = 2 * (2 * Math.SQRT2 - 1) * Math.sqrt((stiffness * perInch * lying) / r);
		const vertical = 5.55 * Math.cbrt(stiffness * perInch ** 2);
		return inclined > vertical
			? { value: inclined, branch: "inclined hole" }
			: { value: vertical, branch: "vertical hole" };
	},
});

/** The push in a string let down, beside the push that would coil it, with the shoe at bottom. */
export const slackOffCompression = tableFormula({
	id: "casing/slack-off-compression",
	name: "Compression of the string let down, beside that of helical buckling",
	expression: "−(F − p_i A_i + p_o A_o), F let down with friction; F_helical at the inclination there",
	source: cite("johancsik-1984", "soft-string tension and side force; from memory"),
	inputs: {
		path: { table: "path" },
		sections: { table: "sections" },
		inside: { table: "pressure" },
		outside: { table: "pressure" },
		MD_cased: "measured-depth",
		μ_cased: "ratio",
		μ_open: "ratio",
		D_cased: "diameter",
		D_open: "diameter",
	},
	gives: {
		md: "measured-depth",
		tvd: "true-vertical-depth",
		compression: "force",
		helical: "force",
	},
	validity: "no stiffness, no buckling in the friction; the pipe on the wall all the way",
	compute: (given) => {
		const sections = loadSectionsOf(given.sections);
		const along = pathStationsOf(given.path);
		const gradient = (table: KnownTable, tvd: number) =>
			profileAt(table, "pressure", tvd + 1) - profileAt(table, "pressure", tvd);
		const rows = slidingForce(laidOut(given.path, sections, given.MD_cased), { ...given, way: -1 });
		const worked = rows.flatMap(({ md, tvd, section: number, force }) => {
			const section = sections[number - 1];
			const place = placeAt(along, md);
			if (section === undefined || place === undefined) return [];
			const { D, t, w } = section;
			const [bore, full] = [(Math.PI / 4) * (D - 2 * t) ** 2, (Math.PI / 4) * D ** 2];
			const effective =
				force -
				bore * profileAt(given.inside, "pressure", tvd) +
				full * profileAt(given.outside, "pressure", tvd);
			const hole: number = md <= given.MD_cased ? given.D_cased : given.D_open;
			const helical = helicalBucklingForce.compute({
				D: quantity("diameter", D),
				t: quantity("diameter", t),
				w: quantity(
					"linear-weight",
					w + bore * gradient(given.inside, tvd) - full * gradient(given.outside, tvd),
				),
				r: quantity("diameter", (hole - D) / 2),
				I: quantity("angle", place.inclination),
			});
			const limit = typeof helical === "number" ? helical : helical.value;
			return [{ md, tvd, compression: Math.max(0, -effective), helical: limit }];
		});
		return worked.every(({ helical }) => Number.isFinite(helical)) ? worked : [];
	},
});

/** Where the push comes nearest to the coiling one, or passes it most. */
const worst = ({ rows }: KnownTable) =>
	rows.reduce<KnownTable["rows"][number] | undefined>(
		(most, row) => (most === undefined || shareOf(row) > shareOf(most) ? row : most),
		undefined,
	);

const shareOf = (row: KnownTable["rows"][number]): number =>
	(row["compression"] ?? Number.NaN) / (row["helical"] ?? Number.NaN);

const inputs = { line: { table: "compression and helical limit" } } as const;
const source = cite("definition");
const validity = "let down with the greatest friction, the shoe at bottom";

export const compressionOverHelical = formula({
	id: "casing/compression-over-helical",
	name: "Greatest compression of the string let down over that of helical buckling",
	expression: "max (compression / F_helical) along the string",
	source,
	inputs,
	gives: "ratio",
	validity,
	compute: ({ line }) => shareOf(worst(line) ?? {}),
});

export const compressionDepth = formula({
	id: "casing/compression-over-helical-depth",
	name: "Depth of the greatest compression over that of helical buckling",
	expression: "MD where compression / F_helical is greatest",
	source,
	inputs,
	gives: "measured-depth",
	validity,
	compute: ({ line }) => worst(line)?.["md"] ?? Number.NaN,
});

export const compressionThere = formula({
	id: "casing/compression-at-worst",
	name: "Compression where it is greatest against helical buckling",
	expression: "compression where compression / F_helical is greatest",
	source,
	inputs,
	gives: "force",
	validity,
	compute: ({ line }) => worst(line)?.["compression"] ?? Number.NaN,
});

export const helicalThere = formula({
	id: "casing/helical-buckling-at-worst",
	name: "Helical buckling force where compression is greatest against it",
	expression: "F_helical where compression / F_helical is greatest",
	source,
	inputs,
	gives: "force",
	validity,
	compute: ({ line }) => worst(line)?.["helical"] ?? Number.NaN,
});
