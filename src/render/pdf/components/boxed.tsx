import type { ReactElement } from "react";
import type { Verdict } from "../../../document/verdict.ts";
import { textWidth, type Weight } from "../../../measure/text-width.ts";
import { INK } from "../design.ts";
import type { Scene } from "../scene.ts";
import { Box, type, Words } from "./primitives.tsx";

const PAD = 3.5;

/** Words in a box of their own width, or of the whole room where they need more lines. */
export const Boxed = ({
	text,
	size,
	weight,
	rule,
	dashed,
	room,
	end,
}: {
	text: string;
	size: number;
	weight: Weight;
	rule: number;
	dashed?: boolean;
	room: number;
	end?: boolean;
}): ReactElement => {
	const frame = 2 * (PAD + rule);
	const width = Math.min(room, textWidth(text, { size, weight }) + frame);
	return (
		<Box
			style={{
				width,
				alignSelf: end === true ? "flex-end" : "flex-start",
				paddingTop: 0.6,
				paddingBottom: 1,
				paddingLeft: PAD,
				paddingRight: PAD,
				borderTopWidth: rule,
				borderRightWidth: rule,
				borderBottomWidth: rule,
				borderLeftWidth: rule,
				borderColor: INK.rule,
				borderStyle: dashed === true ? "dashed" : "solid",
			}}
		>
			<Words style={{ ...type(size, 1.2, weight), width: width - frame }}>{text}</Words>
		</Box>
	);
};

/** A start-critical value that is missing: as loud as the page can be. */
export const Unset = ({
	text,
	size,
	room,
	scene,
	end,
}: {
	text: string;
	size: number;
	room: number;
	scene: Scene;
	end?: boolean;
}): ReactElement => (
	<Boxed
		text={text}
		size={size}
		weight="bold"
		rule={scene.design.rule.thick * 1.2}
		room={room}
		{...(end === true ? { end } : {})}
	/>
);

/**
 * A verdict by its word. What was not met, and what cannot be told, stand in a heavy box, solid and dashed; what wants
 * judgement in a light one. The box repeats the word and never replaces it.
 */
export const VerdictWord = ({
	verdict,
	size,
	room,
	scene,
}: {
	verdict: Verdict;
	size: number;
	room: number;
	scene: Scene;
}): ReactElement => {
	const text = scene.words.verdicts[verdict];
	const { rule } = scene.design;
	switch (verdict) {
		case "not met":
			return <Boxed text={text} size={size} weight="bold" rule={rule.thick} room={room} />;
		case "cannot tell":
			return <Boxed text={text} size={size} weight="bold" rule={rule.thick} dashed room={room} />;
		case "needs judgement":
			return <Boxed text={text} size={size} weight="semibold" rule={rule.hair} room={room} />;
		case "met":
			return <Words style={type(size, 1.2, "semibold")}>{text}</Words>;
		case "does not apply":
			return <Words style={{ ...type(size, 1.2), fontStyle: "italic" }}>{text}</Words>;
		default:
			return verdict satisfies never;
	}
};

/** Height of a box to write in, in lines of body type: a gloved hand needs more than a printer does. */
const PENCIL_LINES = 1.6;

/** A box for a pencil. */
export const PencilBox = ({ scene, width }: { scene: Scene; width: number }): ReactElement => (
	<Box
		style={{
			width,
			minHeight: scene.design.body * PENCIL_LINES,
			borderTopWidth: scene.design.rule.thin,
			borderRightWidth: scene.design.rule.thin,
			borderBottomWidth: scene.design.rule.thin,
			borderLeftWidth: scene.design.rule.thin,
			borderColor: INK.rule,
		}}
	/>
);
