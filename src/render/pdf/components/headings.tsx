import type { ReactElement } from "react";
import type { Block, Section } from "../../../document/blocks.ts";
import { INK } from "../design.ts";
import { inSection, type Scene } from "../scene.ts";
import { Box, Space, type, Words } from "./primitives.tsx";

const printed = ({ number, title }: Section): string =>
	number === undefined ? title : `${number}  ${title}`;

/** Head of a section: a rule, then its number and title. Link target and bookmark. */
export const SectionHead = ({
	section,
	scene,
	first,
}: {
	section: Section;
	scene: Scene;
	/** Stands at the head of a page. */
	first: boolean;
}): ReactElement => {
	const { design } = scene;
	const outline = {
		title: section.number === undefined ? section.title : `${section.number} ${section.title}`,
		level: 1,
	};
	return (
		<>
			{first ? null : <Space height={design.step * 3} />}
			<Box
				id={section.id}
				wrap={false}
				withNext
				style={{
					marginBottom: design.step * 1.2,
					borderTopWidth: design.rule.thick,
					borderColor: INK.heading,
					paddingTop: design.step * 0.7,
				}}
			>
				<Words
					tag={{ role: "H2", ...inSection(scene), outline: { ...outline, level: 1 } }}
					style={{ ...type(design.h2, 1.18, "bold"), color: INK.heading }}
				>
					{printed(section)}
				</Words>
			</Box>
		</>
	);
};

export const Heading = ({
	block,
	preceding,
	scene,
}: {
	block: Extract<Block, { kind: "heading" }>;
	/** What stands before it in the section. */
	preceding: readonly Block[];
	scene: Scene;
}): ReactElement => {
	const { design } = scene;
	// A reader of structure is taken down one level at a time, whatever a heading looks like.
	const under = preceding.some((before) => before.kind === "heading" && before.level === 2);
	const size = block.level === 2 ? design.h3 : design.h4;
	const first = block.level === 2 || !under;
	const role = scene.headless === true ? (first ? "H2" : "H3") : first ? "H3" : "H4";
	return (
		<>
			<Space height={design.step * (block.level === 2 ? 2 : 1.5)} />
			<Words
				{...(block.id === undefined ? {} : { id: block.id })}
				tag={{
					role,
					...inSection(scene),
					...(block.level === 2 ? { outline: { title: block.text, level: 2 as const } } : {}),
				}}
				withNext
				style={{
					...type(size, 1.22, block.level === 2 ? "bold" : "semibold"),
					color: INK.heading,
					marginBottom: design.step * 0.6,
				}}
			>
				{block.text}
			</Words>
		</>
	);
};
