import { XMLParser } from "fast-xml-parser";
import { message } from "../../messages/message.ts";
import { cellText, ForeignFault, type ForeignTable, headText } from "./foreign-table.ts";

/** Names of elements are compared without letter case: version 1 writes `trajectoryStation`, version 2 `TrajectoryStation`. */
const parser = new XMLParser({
	ignoreAttributes: false,
	attributeNamePrefix: "@",
	removeNSPrefix: true,
	parseTagValue: false,
	processEntities: false,
	transformTagName: (name) => name.toLowerCase(),
	isArray: (name) => name === "trajectory" || name === "trajectorystation",
});

type Node = Readonly<Record<string, unknown>>;

const isNode = (value: unknown): value is Node =>
	typeof value === "object" && value !== null && !Array.isArray(value);

const trajectoriesIn = (node: unknown): readonly Node[] => {
	if (Array.isArray(node)) return node.flatMap(trajectoriesIn);
	if (!isNode(node)) return [];
	const own = node["trajectory"];
	const here = Array.isArray(own) ? own.filter(isNode) : [];
	return here.length > 0 ? here : Object.values(node).flatMap(trajectoriesIn);
};

/** The text of an element, and its unit where it has one. */
const measure = (node: unknown): { readonly text: string; readonly unit: string } => {
	if (isNode(node)) return { text: String(node["#text"] ?? "").trim(), unit: String(node["@uom"] ?? "") };
	return { text: typeof node === "string" ? node.trim() : "", unit: "" };
};

const QUANTITIES = ["md", "incl", "azi"] as const;
const DEGREES_A_RADIAN = 180 / Math.PI;
/** A turn from radians leaves digits that no survey tells: a millionth of a degree is kept. */
const PARTS_A_DEGREE = 1e6;

const inDegrees = (text: string): string => {
	const value = Number(text);
	return text === "" || Number.isNaN(value)
		? text
		: String(Math.round(value * DEGREES_A_RADIAN * PARTS_A_DEGREE) / PARTS_A_DEGREE);
};

/**
 * The stations of one WITSML trajectory (1.4.1.1 or 2.1) as a table of measured depth, inclination and azimuth, in the
 * order of the file. Angles in radians are turned to degrees.
 *
 * The elements are those of the Energistics schemas, trajectoryStation of 1.4.1.1 and TrajectoryStation of 2.1; from memory.
 * @throws ForeignFault
 */
export const witsmlText = (bytes: Uint8Array): ForeignTable => {
	const text = new TextDecoder().decode(bytes);
	// What a document declares of its own could grow a few lines to billions; no trajectory needs any.
	if (/<!(?:DOCTYPE|ENTITY)/iu.test(text)) throw new ForeignFault(message("foreign/xml-doctype"));
	const tree: unknown = parser.parse(text, true);
	const found = trajectoriesIn(tree).filter((each) => Array.isArray(each["trajectorystation"]));
	const [only, second] = found;
	if (only === undefined) throw new ForeignFault(message("foreign/witsml-none"));
	if (second !== undefined)
		throw new ForeignFault(message("foreign/witsml-several", { count: found.length }));
	const stations = (only["trajectorystation"] as readonly unknown[]).filter(isNode);
	const units = QUANTITIES.map((name) => {
		const all = new Set(
			stations
				.map((station) => measure(station[name]))
				.filter((each) => each.text !== "")
				.map(({ unit }) => unit),
		);
		if (all.size > 1)
			throw new ForeignFault(message("foreign/witsml-units", { name, units: [...all].join(", ") }));
		return [...all][0] ?? "";
	});
	const rows = stations.map((station) =>
		QUANTITIES.map((name, i) => {
			const { text: value } = measure(station[name]);
			return cellText(units[i] === "rad" ? inDegrees(value) : value);
		}).join(","),
	);
	const heads = QUANTITIES.map((name, i) => headText(name, units[i] === "rad" ? "deg" : (units[i] ?? "")));
	const north = measure(only["aziref"]).text;
	return {
		format: /energistics\.org\/energyml\/data\/witsmlv2/iu.test(text) ? "WITSML 2" : "WITSML 1.4",
		text: [heads.join(","), ...rows].join("\n"),
		...(north === "" ? {} : { north }),
	};
};
