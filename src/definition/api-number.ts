import * as z from "zod";
import { message } from "../messages/message.ts";
import type { Audience } from "./audience.ts";
import { field } from "./field.ts";

/**
 * API well number: state (2 digits), county (3), well (5), and where used the directional sidetrack (2) and the
 * event sequence (2); with hyphens or without.
 *
 * @source api-d20
 */
const API_NUMBER = /^\d{2}-?\d{3}-?\d{5}(?:-?\d{2}(?:-?\d{2})?)?$/;

export const apiNumber = (title: string, why: string, papers: Audience) =>
	field(
		z.string().refine((text) => API_NUMBER.test(text.trim()), {
			params: { fault: "api-number" },
		}),
		{
			title,
			why,
			papers,
			expected: message("definition/expected.api-number"),
			example: "42-000-00000-00-00",
		},
	);
