import type { PaperContext } from "../context.ts";
import { attachmentWords } from "./attachment.ts";
import { doneWords } from "./done.ts";
import { fearWords } from "./fears.ts";
import { neighborWords } from "./neighbor.ts";
import { otherWellWords } from "./other-wells.ts";
import { padWords } from "./pad.ts";
import { peopleWords } from "./people.ts";
import { roadWords } from "./road.ts";
import { treatmentWords } from "./treatment.ts";
import { waterWords } from "./water.ts";
import { wellWords } from "./well.ts";

/**
 * Everything a template may name, in one flat list. A value that the well lacks is `false`, so that a template can ask
 * for it with `{{#if}}`; numbers stay numbers until the renderer.
 */
export const narrative = (context: PaperContext): Readonly<Record<string, unknown>> => ({
	...attachmentWords(context),
	...wellWords(context),
	...waterWords(context),
	...treatmentWords(context),
	...doneWords(context),
	...roadWords(context),
	...fearWords(context),
	...peopleWords(context),
	...neighborWords(context),
	...otherWellWords(context),
	...padWords(context),
});
