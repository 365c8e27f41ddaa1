import { Fragment, type ReactElement, type ReactNode } from "react";
import type { Block, Section } from "../../../document/blocks.ts";
import { SHEETS } from "../design.ts";
import type { Sheet } from "../layout/vocabulary.ts";
import { atScale, onSheet, type Scene } from "../scene.ts";
import type { Tag } from "../tags.ts";
import { Beside } from "./beside.tsx";
import { Callout } from "./callout.tsx";
import { Columns } from "./columns.tsx";
import { Contents, ListOf } from "./contents.tsx";
import { Figure } from "./drawing.tsx";
import { Facts, KeyFigures } from "./facts.tsx";
import { Heading, SectionHead } from "./headings.tsx";
import { Box, Pages, Root } from "./primitives.tsx";
import { List, Paragraph } from "./prose.tsx";
import { SignIn } from "./sign-in.tsx";
import { Table } from "./table.tsx";
import { TitleBlock } from "./title-block.tsx";

const setBlock = (
	block: Block,
	preceding: readonly Block[],
	following: readonly Block[],
	scene: Scene,
): ReactElement => {
	switch (block.kind) {
		case "heading":
			return <Heading block={block} preceding={preceding} scene={scene} />;
		case "paragraph":
			return <Paragraph block={block} following={following} scene={scene} />;
		case "list":
			return <List block={block} scene={scene} blocks={setBlocks} />;
		case "facts":
			return <Facts block={block} scene={scene} />;
		case "figures":
			return <KeyFigures block={block} scene={scene} />;
		case "table":
			return <Table block={block} scene={scene} />;
		case "figure":
			return <Figure block={block} scene={scene} />;
		case "callout":
			return <Callout block={block} scene={scene} blocks={setBlocks} />;
		case "columns":
			return <Columns block={block} scene={scene} blocks={setBlocks} />;
		case "sign-in":
			return <SignIn block={block} scene={scene} />;
		case "contents":
			return <Contents scene={scene} section={scene.title} />;
		case "list-of":
			return <ListOf block={block} scene={scene} />;
		case "beside":
			return <Beside block={block} scene={scene} blocks={setBlocks} />;
		case "page-break":
			return <Box break />;
		default:
			return block satisfies never;
	}
};

const setBlocks = (blocks: readonly Block[], scene: Scene): ReactNode =>
	blocks.map((block, i) => {
		const [preceding, following] = [blocks.slice(0, i), blocks.slice(i + 1)];
		// biome-ignore lint/suspicious/noArrayIndexKey: a paper is set once, in this order
		return <Fragment key={i}>{setBlock(block, preceding, following, scene)}</Fragment>;
	});

/** Runs of sections that share pages: each run begins on a new one. */
export const runsOf = (sections: readonly Section[]): readonly (readonly Section[])[] =>
	sections.reduce<Section[][]>((all, section) => {
		const last = all.at(-1);
		if (last === undefined || section.newPage === true || section.sheet !== last[0]?.sheet)
			all.push([section]);
		else last.push(section);
		return all;
	}, []);

/** How a run of sections is set, where that was to be found: on which sheet, in type of which share of its size. */
export interface Fit {
	readonly sheet: Sheet;
	readonly scale: number;
}

/** The pages of one run. */
const RunPages = ({
	scene,
	sections,
	first,
	fit,
}: {
	scene: Scene;
	sections: readonly Section[];
	/** The paper begins with it. */
	first: boolean;
	fit: Fit | undefined;
}): ReactElement => {
	const { sheet } = sections[0] ?? {};
	const own = sheet === undefined ? scene : onSheet(scene, SHEETS[sheet]);
	const here = fit === undefined ? own : atScale(onSheet(own, fit.sheet), fit.scale);
	return (
		<Pages sheet={here.sheet} fontSize={here.design.body}>
			{first ? <TitleBlock scene={here} /> : null}
			{sections.map((section, i) => {
				const sect: Tag = { role: "Sect" };
				const inside = { ...here, sect, title: section.title, headless: section.headless === true };
				return (
					<Fragment key={section.id}>
						{section.headless === true ? null : (
							<SectionHead section={section} scene={inside} first={i === 0} />
						)}
						{setBlocks(section.blocks, inside)}
					</Fragment>
				);
			})}
		</Pages>
	);
};

/** One run of sections as a paper of its own, to see how many pages it takes. */
export const RunAlone = (
	scene: Scene,
	sections: readonly Section[],
	first: boolean,
	fit: Fit,
): ReactElement => (
	<Root>
		<RunPages scene={scene} sections={sections} first={first} fit={fit} />
	</Root>
);

/** A paper as an element tree. Blocks lie flat on the page, with no box around a section. */
export const Paper = (scene: Scene, fits: readonly (Fit | undefined)[] = []): ReactElement => {
	const groups = runsOf(scene.sections);
	return (
		<Root>
			{(groups.length === 0 ? [[]] : groups).map((sections, i) => (
				<RunPages
					key={sections[0]?.id ?? ""}
					scene={scene}
					sections={sections}
					first={i === 0}
					fit={fits[i]}
				/>
			))}
		</Root>
	);
};
