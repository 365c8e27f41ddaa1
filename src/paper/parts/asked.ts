import type { Block } from "../../document/blocks.ts";
import { text } from "../../document/inline.ts";
import type { PaperContext } from "../context.ts";
import { evidenceOf, hasNoOtherWells } from "../narrative/other-wells.ts";
import { ownWords, type Topic } from "../own-words.ts";
import { asGiven, type Part } from "./part.ts";

/**
 * Topics of the community block by the section of the packet that they belong to: each stands beside what is computed of
 * the same fear. Every topic has its place; a test holds the list against the definition.
 */
export const ASKED = {
	"asked-water": ["water_testing", "water_flow_testing", "damage"],
	"asked-protection": ["cement_shortfall", "corrosion", "inspections"],
	"asked-path": ["old_wells", "faults", "gathering_lines"],
	"asked-weeks": ["noise", "lights", "dust"],
	"asked-roads": ["hauling_hours", "road_damage"],
	"asked-pumped": ["waste", "radioactivity"],
	"asked-trouble": [
		"emergency",
		"fire_department",
		"spills",
		"air_testing",
		"flaring",
		"shaking",
		"site_walls",
		"record",
		"workers",
	],
	"asked-afterwards": ["pad_afterwards", "plugging", "producing_life", "treating_again"],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** What the other wells' records show of them, as the presenter answers it; nothing where no record is named.
 * Where the area was searched and no well found, that is the answer. */
const sealedOldWells = (context: PaperContext): string | undefined => {
	const shown = context.well.offsetWells.flatMap((entry) => {
		const evidence = evidenceOf(entry);
		return evidence === "" ? [] : [`${entry.name} (${asGiven(context, entry.status)}): ${evidence}.`];
	});
	if (shown.length > 0) return shown.join(" ");
	return hasNoOtherWells(context) ? context.words.label("phrases.no_other_wells") : undefined;
};

/** Each question with the operator's answer; those without one together, as what we do not know yet. */
const asked =
	(topics: readonly Topic[]): Part =>
	(context) => {
		const { label } = context.words;
		const question = (topic: string): string => label(`questions.${topic}`);
		const answerTo = (topic: Topic): string | undefined =>
			ownWords(context, topic) ?? (topic === "old_wells" ? sealedOldWells(context) : undefined);
		const answers = topics.flatMap((topic): Block[] => {
			const said = answerTo(topic);
			return said === undefined
				? []
				: [
						{
							kind: "paragraph",
							children: [{ kind: "strong", children: [text(question(topic))] }, text(` ${said}`)],
						},
					];
		});
		const open = topics.filter((topic) => answerTo(topic) === undefined);
		if (open.length === 0) return answers;
		return [
			...answers,
			{
				kind: "paragraph",
				children: [
					{ kind: "strong", children: [text(label("phrases.not_known"))] },
					text(` ${open.map(question).join(" ")}`),
				],
			},
		];
	};

export const askedParts: Readonly<Record<string, Part>> = Object.fromEntries(
	Object.entries(ASKED).map(([name, topics]) => [name, asked(topics)]),
);
