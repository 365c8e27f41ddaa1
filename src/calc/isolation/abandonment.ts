import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** Slurry of a plug [bbl]. */
export const plugVolume = formula({
	id: "isolation/plug-volume",
	name: "Volume of a plug",
	expression: "V = Σ C_i L_i (1 + e)",
	source: cite("balanced-plug-notes", "1, cement volume with the pipe out"),
	inputs: { C_i: { many: "capacity" }, L_i: { many: "length" }, e: "share" },
	gives: "volume",
	validity: "a capacity for each length; excess not below zero",
	compute: ({ C_i, L_i, e }) =>
		C_i.length !== L_i.length || e < 0
			? Number.NaN
			: (1 + e) * C_i.reduce<number>((sum, C, i) => sum + C * (L_i[i] ?? Number.NaN), 0),
});

/** Zones that no plug closes [count]. */
export const zonesUnplugged = formula({
	id: "isolation/zones-unplugged",
	name: "Zones without a plug",
	expression: "number with n_i < 1",
	source: cite("definition", "n_i, plugs that close a zone"),
	inputs: { n_i: { many: "count" } },
	gives: "count",
	compute: ({ n_i }) => n_i.filter((n) => n < 1).length,
});

/** How far above a zone the bottom of a plug may be that caps it [ft]. */
const CAP = 200;

/** Plugs that close a zone: across its top, or capping it from just above; water is closed at its base. */
export const plugsClosing = formula({
	id: "isolation/plugs-closing",
	name: "Plugs that close a zone",
	expression: "number with TVD_top < z and TVD_bottom ≥ z − 200 ft",
	source: cite("common-practice", "a plug across each zone's top, or within 200 ft above it"),
	inputs: {
		z: "true-vertical-depth",
		TVD_top: { many: "true-vertical-depth" },
		TVD_bottom: { many: "true-vertical-depth" },
	},
	gives: "count",
	validity: "z: the top of a zone that flows, the base of protected water",
	compute: ({ z, TVD_top, TVD_bottom }) =>
		TVD_top.length !== TVD_bottom.length
			? Number.NaN
			: TVD_top.filter((top, i) => top < z && (TVD_bottom[i] ?? Number.NaN) >= z - CAP).length,
});
