import type { Block, Cell, Row, Section } from "../../src/document/blocks.ts";
import type { Language, PaperDocument, Setting } from "../../src/document/document.ts";
import { type Inline, type QuantityText, text } from "../../src/document/inline.ts";
import type { Drawing } from "../../src/document/shapes.ts";
import type { Dimension } from "../../src/units/dimensions.ts";
import type { QuantityStyle } from "../../src/units/format.ts";

/** Everything here is invented: operator, well, county and numbers. It exists to put every kind of block on paper. */

export const q = (dimension: Dimension, value: number, style?: QuantityStyle): QuantityText => ({
	kind: "quantity",
	dimension,
	value,
	...(style === undefined ? {} : { style }),
});
const t = (value: string): Cell => ({ kind: "text", text: value });
export const p = (...children: readonly (Inline | string)[]): Block => ({
	kind: "paragraph",
	children: children.map((child) => (typeof child === "string" ? text(child) : child)),
});

const hatch = (x: number, y: number, width: number, height: number, step: number): string => {
	const segments: string[] = [];
	for (let d = 0; d < width + height; d += step)
		segments.push(`M${x + d} ${y}L${x + d - height} ${y + height}`);
	return segments.join("");
};

export const drawing: Drawing = {
	id: "sample-close-up",
	width: 420,
	height: 250,
	title: "Isolation close-up",
	alternative:
		"Ground level at the top. Fresh water to 410 ft. Two strings of steel with cement stand across it; the surface shoe is at 640 ft. The table below gives every depth.",
	scale: "Depth to scale: 1 in = 230 ft. Widths are not to scale.",
	shapes: [
		{ kind: "path", d: "M60 40H360V150H60Z", fill: "#cfe6f2", fillOpacity: 0.55 },
		{
			kind: "path",
			d: hatch(60, 150, 300, 60, 7),
			stroke: { color: "#555555", width: 0.5 },
			clip: "M60 150H360V210H60Z",
		},
		{ kind: "line", x1: 60, y1: 40, x2: 360, y2: 40, stroke: { color: "#111111", width: 1.5 } },
		{ kind: "line", x1: 60, y1: 150, x2: 360, y2: 150, stroke: { color: "#0072b2", width: 1, dash: [5, 3] } },
		{
			kind: "group",
			dx: 150,
			dy: 0,
			name: "surface casing",
			children: [
				{ kind: "path", d: "M0 40H14V210H0Z", fill: "#b9b2a5", stroke: { color: "#111111", width: 0.5 } },
				{ kind: "path", d: "M14 30V212M106 30V212", stroke: { color: "#111111", width: 2.25 } },
				{
					kind: "path",
					d: "M106 40H120V210H106Z",
					fill: "#b9b2a5",
					stroke: { color: "#111111", width: 0.5 },
				},
				{ kind: "path", d: "M40 26V240M80 26V240", stroke: { color: "#111111", width: 1.5 } },
			],
		},
		{ kind: "text", x: 366, y: 44, text: "ground level", size: 8, color: "#111111" },
		{ kind: "text", x: 366, y: 153, text: "410 ft", size: 8, color: "#111111", weight: "semibold" },
		{ kind: "text", x: 366, y: 213, text: "640 ft shoe", size: 8, color: "#111111" },
		{
			kind: "text",
			x: 105,
			y: 98,
			text: "fresh water",
			size: 9,
			color: "#12324a",
			anchor: "middle",
			italic: true,
		},
		{
			kind: "text",
			x: 48,
			y: 130,
			text: "depth below ground",
			size: 8,
			color: "#111111",
			anchor: "middle",
			rotate: -90,
		},
	],
};

export const surveyRows = (count: number): readonly Row[] =>
	Array.from({ length: count }, (_, i): Row => {
		const depth = 500 + i * 94.7;
		return {
			cells: {
				station: t(String(i + 1)),
				md: q("measured-depth", depth),
				tvd: q("true-vertical-depth", Math.min(depth, 8012.4)),
				angle: q("angle", Math.min(90, i * 1.37)),
				azimuth: q("angle", 181.2),
				bend: q("dogleg", (i * 0.61) % 10),
				how: t(i % 4 === 0 ? "measured while drilling" : "planned"),
			},
		};
	});

export const surveyTable = (rows: number): Extract<Block, { kind: "table" }> => ({
	kind: "table",
	id: "t-survey",
	caption: "Directional survey, measured depth from the kelly bushing",
	dense: true,
	columns: [
		{ id: "station", head: "Station", width: 1, kind: "text", rowHead: true },
		{
			id: "md",
			head: "Measured depth",
			width: 1.4,
			kind: "quantity",
			dimension: "measured-depth",
			style: { decimals: 1 },
		},
		{
			id: "tvd",
			head: "True vertical depth",
			width: 1.4,
			kind: "quantity",
			dimension: "true-vertical-depth",
			style: { decimals: 1 },
		},
		{ id: "angle", head: "Inclination", width: 1.2, kind: "quantity", dimension: "angle" },
		{ id: "azimuth", head: "Azimuth", width: 1.2, kind: "quantity", dimension: "angle" },
		{ id: "bend", head: "Dogleg", width: 1.2, kind: "quantity", dimension: "dogleg" },
		{ id: "how", head: "How known", width: 2, kind: "text" },
	],
	rows: surveyRows(rows),
});

const casing: Block = {
	kind: "table",
	id: "t-casing",
	caption: "Casing program",
	columns: [
		{ id: "string", head: "String", width: 2, kind: "text", rowHead: true },
		{
			id: "size",
			head: "Outside diameter",
			width: 1.3,
			kind: "quantity",
			dimension: "diameter",
			style: { pipeSize: true },
		},
		{ id: "weight", head: "Weight", width: 1.2, kind: "quantity", dimension: "linear-weight" },
		{ id: "shoe", head: "Shoe, MD", width: 1.2, kind: "quantity", dimension: "measured-depth" },
		{ id: "burst", head: "Burst rating", width: 1.2, kind: "quantity", dimension: "pressure" },
		{ id: "check", head: "Check result", width: 1.8, kind: "verdict" },
	],
	rows: [
		{ cells: { string: t("Vertical part") }, emphasis: "group" },
		{
			cells: {
				string: t("Surface"),
				size: q("diameter", 13.375),
				weight: q("linear-weight", 54.5),
				shoe: q("measured-depth", 640),
				burst: q("pressure", 2730),
				check: { kind: "verdict", verdict: "met" },
			},
		},
		{
			cells: {
				string: t("Intermediate"),
				size: q("diameter", 9.625),
				weight: q("linear-weight", 40),
				shoe: q("measured-depth", 7310),
				burst: q("pressure", 5750),
				check: { kind: "verdict", verdict: "not met" },
			},
		},
		{ cells: { string: t("Lateral") }, emphasis: "group" },
		{
			cells: {
				string: t("Production"),
				size: q("diameter", 5.5),
				weight: q("linear-weight", 23),
				shoe: q("measured-depth", 18_640),
				burst: { kind: "unset", text: "NOT SET" },
				check: { kind: "verdict", verdict: "cannot tell" },
			},
		},
		{
			cells: {
				string: t("Tubing"),
				size: { kind: "none" },
				weight: { kind: "none" },
				shoe: { kind: "blank" },
				burst: { kind: "none" },
				check: { kind: "verdict", verdict: "does not apply" },
			},
		},
		{
			cells: {
				string: t("Whole well"),
				shoe: q("measured-depth", 18_640),
				check: { kind: "verdict", verdict: "needs judgement" },
			},
			emphasis: "total",
		},
	],
	note: [
		text("Ratings are the pipe body’s by the published formula; the connection may be weaker. See "),
		{ kind: "link", to: "water", children: [text("the water section")] },
		text("."),
	],
};

const lorem = [
	"The surface string is set below the deepest protected water and cemented from its shoe to the ground, so that steel and cement stand between the hole and every fresh-water bed that it passes.",
	"Cement volumes include the excess stated for each section. Where returns are not seen at the surface, the top is found by temperature survey and the contingency below applies before drilling goes on.",
	"Depths are measured from the kelly bushing, 26 ft above ground, unless the column head says otherwise; the datum is restated in each depth table.",
];

const sections = (language: Language): readonly Section[] => [
	{
		id: "summary",
		number: "1",
		title: language === "es" ? "Resumen del plan" : "Summary of the plan",
		blocks: [
			{
				kind: "paragraph",
				tone: "lead",
				children: [
					text(
						"One horizontal well, three strings of steel, each cemented. The numbers below come from one definition and agree in every paper made from it.",
					),
				],
			},
			{
				kind: "figures",
				items: [
					{
						value: q("length", 7372),
						label: "rock between the treated zone and the deepest water well",
						note: "about 1.4 miles",
					},
					{
						value: q("pressure", 9650),
						label: "maximum treating pressure",
						note: "limited by the production casing",
					},
					{ value: { kind: "unset", text: "NOT SET" }, label: "pump trip" },
				],
			},
			{
				kind: "facts",
				columns: 2,
				caption: "Location",
				items: [
					{ label: "County and state", value: t("Harlan Mesa County (fictional)") },
					{ label: "Ground elevation", value: q("elevation", 1482) },
					{
						label: "Total depth",
						value: q("measured-depth", 18_640),
						note: "planned; 8,012 ft true vertical",
					},
					{ label: "Water base set by", value: { kind: "none" } },
					{ label: "Offset review", value: { kind: "verdict", verdict: "cannot tell" } },
					{ label: "Spud date", value: { kind: "blank" } },
				],
			},
			{ kind: "contents" },
		],
	},
	{
		id: "water",
		number: "2",
		title: "Water, and how it is kept apart",
		blocks: [
			p(
				lorem[0] ?? "",
				" ",
				{ kind: "strong", children: [text("Two")] },
				" layers of steel and ",
				{ kind: "emphasis", children: [text("two of cement")] },
				" cross the water base at ",
				q("depth-below-ground", 410),
				" (check: ",
				{ kind: "verdict", verdict: "met" },
				"). The permit is kept ",
				{ kind: "link", to: "https://example.org/permit", children: [text("by the agency")] },
				".",
			),
			p(lorem[1] ?? ""),
			{
				kind: "figure",
				id: "f-close-up",
				drawing,
				caption: [
					{ kind: "strong", children: [text("Isolation close-up. ")] },
					text("Steel and cement across the fresh water."),
				],
			},
			{
				kind: "callout",
				tone: "caution",
				title: "A plan, not an opinion on compliance",
				blocks: [
					p(
						"Local rules, permit conditions and a licensed engineer’s judgement govern. A check that is met says only that the number stands on the right side of the limit named beside it.",
					),
				],
			},
			{
				kind: "callout",
				tone: "stop",
				title: "If returns are lost while cementing",
				blocks: [
					p("Stop pumping. Hold pressure. Anyone may call it."),
					{
						kind: "list",
						ordered: true,
						items: [
							[p("Close the annulus valve.")],
							[p("Read both gauges aloud; write them down.")],
							[p("Call the company representative before anything is opened.")],
						],
					},
				],
			},
			{
				kind: "callout",
				tone: "note",
				title: "Where the top of cement is not seen",
				blocks: [p("The calculated top is printed as calculated, and marked so.")],
			},
			{ kind: "heading", level: 2, text: "Strings" },
			p(lorem[2] ?? ""),
			casing,
			{ kind: "heading", level: 3, text: "What was assumed" },
			{
				kind: "list",
				ordered: false,
				items: [
					[p("Geothermal gradient: ", q("pressure-gradient", 0.465), " of salt water outside the pipe.")],
					[
						p("Collapse is judged on empty pipe."),
						{ kind: "list", ordered: false, items: [[p("But for the production string: half empty.")]] },
					],
					[p(lorem[1] ?? "")],
				],
			},
		],
	},
	{
		id: "survey",
		number: "3",
		title: "Survey",
		newPage: true,
		blocks: [
			p(lorem[2] ?? ""),
			surveyTable(70),
			{ kind: "heading", level: 2, text: "Attendance", id: "attendance" },
			{
				kind: "sign-in",
				columns: [
					{ head: "Name", width: 3 },
					{ head: "Company", width: 2 },
					{ head: "Signature", width: 3 },
				],
				lines: 6,
			},
			{ kind: "page-break" },
			{
				kind: "paragraph",
				tone: "note",
				children: [
					text(
						"End of the paper. Ratings ≥ loads ± tolerance; 9⅝ in, 13⅜ in, 20 °C, µ, × — “quoted”, señal, ¿qué?",
					),
				],
			},
		],
	},
];

export const samplePaper = (setting: Setting = "office", language: Language = "en"): PaperDocument => ({
	paper: setting === "field" ? "crew" : setting === "public" ? "landowner" : "regulator",
	language,
	units: "field",
	setting,
	imprint: {
		operator: "Bluestem & Rye Operating (fictional)",
		well: "Quarry Lantern 12-4H",
		apiNumber: "99-123-45678",
		title: "Well construction and stimulation plan",
		subtitle: "Attachment to the application for permit to drill",
		state: "draft",
		revision: "B",
		issued: "2026-03-02",
		issuedAs: "2026-03-02",
		validUntil: "2026-09-01",
		digest: "5f3a90c1",
		caution:
			"Planning aid. Local rules, permit conditions and the judgement of a licensed engineer govern. Fictional well.",
		subject: "Construction and stimulation of one horizontal well",
		words:
			language === "es"
				? { page: "página", of: "de", revision: "revisión", contents: "Contenido" }
				: { page: "page", of: "of", revision: "revision", contents: "Contents" },
	},
	sections: sections(language),
});
