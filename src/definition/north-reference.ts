import * as z from "zod";
import { message } from "../messages/message.ts";
import type { Audience } from "./audience.ts";
import { field } from "./field.ts";

/** Which north an azimuth is counted from. YAML reads a bare `true` as a truth value; here it is a direction. */
export const northReference = (title: string, why: string, papers: Audience) =>
	field(z.union([z.enum(["grid", "true", "magnetic"]), z.literal(true).transform((): "true" => "true")]), {
		title,
		why,
		papers,
		expected: message("definition/expected.north"),
	});
