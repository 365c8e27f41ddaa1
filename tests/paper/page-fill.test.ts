import { expect, it } from "vitest";
import { printWordsOf } from "../../src/render/print/print-words.ts";
import { faultsOfFill } from "../render/page-fill.ts";
import { documentOf, EDITIONS } from "../run/editions.ts";

const ATTACHMENT = EDITIONS.filter(({ request }) =>
	["regulator", "regulator-appendix", "transmittal"].includes(request.paper),
);

it.each(ATTACHMENT)(
	"$title: no short table is divided, no page left empty, no heading and no tail left alone",
	(edition) => {
		const document = documentOf(edition);
		const { continued } = printWordsOf(document);
		expect(faultsOfFill(document, continued)).toEqual([]);
	},
);
