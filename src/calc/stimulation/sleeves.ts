import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { holeMark } from "../depths/marks.ts";
import { maybe } from "../gaps.ts";
import type { StimulationResults } from "../results.ts";
import { type StageContext, uppermost } from "./stage-results.ts";

/** By how much a ball is larger than its seat [in]. */
export const ballBearing = formula({
	id: "stimulation/ball-bearing",
	name: "Ball over its seat",
	expression: "ΔD = D_b − D_s",
	source: cite("definition", "diameters"),
	inputs: { D_b: "diameter", D_s: "diameter" },
	gives: "diameter",
	validity: "a ball larger than its seat",
	compute: ({ D_b, D_s }) => (D_b > D_s ? D_b - D_s : Number.NaN),
});

/** Room of a ball in the narrowest seat that it passes [in]. */
export const ballRoom = formula({
	id: "stimulation/ball-room",
	name: "Narrowest seat above over the ball",
	expression: "ΔD = min D_s,i − D_b",
	source: cite("definition", "diameters"),
	inputs: { D_b: "diameter", D_s: { many: "diameter" } },
	gives: "diameter",
	validity: "at least one seat, each larger than the ball",
	compute: ({ D_b, D_s }) => {
		const least = Math.min(...D_s);
		return D_s.length > 0 && least > D_b ? least - D_b : Number.NaN;
	},
});

/** Each sleeve with where it stands, what its ball bears on, and the room that the ball has on its way. */
export const sleeveResults = ({ well, stimulation, path }: StageContext): StimulationResults["sleeves"] =>
	stimulation.sleeves?.flatMap(({ stage: number, seat, ball }, i, sleeves) => {
		const stage = stimulation.stages.find((each) => each.number === number);
		if (stage === undefined) return [];
		const above = sleeves.slice(i + 1).map((each) => each.seat);
		return [
			{
				id: `stage-${number}`,
				number,
				uppermost: holeMark(path, uppermost(stage), well.datum),
				seat,
				...maybe("ball", ball),
				...maybe("bearing", ball && ballBearing.of({ D_b: ball, D_s: seat })),
				...maybe("room", ball && above.length > 0 ? ballRoom.of({ D_b: ball, D_s: above }) : undefined),
			},
		];
	});
