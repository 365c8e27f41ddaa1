import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { inches, SAME_DIAMETER } from "./check-passage.ts";
import { type Desk, fault, placeOf } from "./desk.ts";
import type { CasingString, Sleeve, Stimulation } from "./well.ts";

const AT: Path = ["stimulation", "stages", "sleeves"];

/**
 * Every sleeve belongs to a stage; seats grow smaller toward the toe; a ball passes the pipe and every seat above its
 * own, and lands on its own.
 */
export const checkSleeves = (
	{ sleeves, stages, treatingString }: Stimulation,
	treated: CasingString | undefined,
	desk: Desk,
): void => {
	if (sleeves === undefined) return;
	const pipes = [...(treatingString?.sections ?? []), ...(treated?.sections ?? [])];
	const drift = pipes.reduce((least, { drift }) => Math.min(least, drift.value), Number.POSITIVE_INFINITY);
	for (const [i, sleeve] of sleeves.entries()) {
		if (stages.length > 0 && !stages.some(({ number }) => number === sleeve.stage)) {
			unknownStage(sleeve, stages.length, desk);
			continue;
		}
		const below = sleeves[i - 1];
		if (below !== undefined && below.seat.value >= sleeve.seat.value - SAME_DIAMETER)
			seatOrder(below, sleeve, desk);
		else checkBall(sleeve, sleeves.slice(i + 1), drift, desk);
	}
};

const unknownStage = ({ stage, seat }: Sleeve, count: number, desk: Desk): void => {
	fault(desk, "well/unknown-stage", placeOf(seat, AT), {
		what: message("well/unknown-stage.what", { stage: String(stage) }),
		expected: message("well/unknown-stage.expected", { count: String(count) }),
		found: String(stage),
		mend: message("well/unknown-stage.mend"),
	});
};

const seatOrder = (below: Sleeve, above: Sleeve, desk: Desk): void => {
	fault(desk, "well/sleeve-balls", placeOf(above.seat, AT), {
		what: message("well/sleeve-balls.what", { stage: String(above.stage), stage2: String(below.stage) }),
		expected: message("well/sleeve-balls.expected", { seat: inches(below.seat.value) }),
		found: inches(above.seat.value),
		mend: message("well/sleeve-balls.mend"),
		related: [
			{
				at: placeOf(below.seat, AT),
				label: message("well/sleeve-balls.label", { stage: String(below.stage) }),
			},
		],
	});
};

const checkBall = (
	{ stage, seat, ball }: Sleeve,
	above: readonly Sleeve[],
	drift: number,
	desk: Desk,
): void => {
	if (ball === undefined) return;
	if (ball.value <= seat.value + SAME_DIAMETER) {
		fault(desk, "well/sleeve-balls", placeOf(ball, AT), {
			what: message("well/sleeve-balls.ball-stage-does-not-land", { stage: String(stage) }),
			expected: message("well/sleeve-balls.expected", { seat: inches(seat.value) }),
			found: inches(ball.value),
			mend: message("well/sleeve-balls.choose-larger-ball-or-smaller"),
			related: [{ at: placeOf(seat, AT), label: message("well/sleeve-balls.its-seat") }],
		});
		return;
	}
	// Seats that are out of order themselves are told as such.
	const [narrowest] = above
		.filter((each) => each.seat.value > seat.value)
		.sort((a, b) => a.seat.value - b.seat.value);
	if (narrowest !== undefined && ball.value >= narrowest.seat.value - SAME_DIAMETER) {
		fault(desk, "well/sleeve-balls", placeOf(ball, AT), {
			what: message("well/sleeve-balls.ball-stage-does-not-pass", {
				stage: String(stage),
				stage2: String(narrowest.stage),
			}),
			expected: message("well/sleeve-balls.less-than", { seat: inches(narrowest.seat.value) }),
			found: inches(ball.value),
			mend: message("well/sleeve-balls.choose-smaller-ball-or-larger"),
			related: [
				{
					at: placeOf(narrowest.seat, AT),
					label: message("well/sleeve-balls.label", { stage: String(narrowest.stage) }),
				},
			],
		});
		return;
	}
	if (ball.value >= drift - SAME_DIAMETER)
		fault(desk, "well/sleeve-balls", placeOf(ball, AT), {
			what: message("well/sleeve-balls.ball-stage-does-not-pass-2", { stage: String(stage) }),
			expected: message("well/sleeve-balls.less-than-2", { drift: inches(drift) }),
			found: inches(ball.value),
			mend: message("well/sleeve-balls.choose-smaller-ball-and-seat"),
		});
};
