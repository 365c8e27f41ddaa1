import { Resvg } from "@resvg/resvg-js";
import type { Drawing } from "../../document/shapes.ts";
import { FACES, FAMILY } from "../../measure/faces.ts";
import { renderSvg } from "../svg/render-svg.ts";
import { withResolution } from "./resolution.ts";

/** Dots to the inch of a picture: fine enough to print, and for a slide of 1920 dots across. */
const DOTS_PER_INCH = 300;

const POINTS_PER_INCH = 72;

/**
 * A drawing as a PNG picture on white, at its own size on paper: the SVG, drawn with the shipped typeface and no other, so
 * that the same drawing gives the same bytes on one machine and looks the same on any.
 */
export const renderPng = (drawing: Drawing, dotsPerInch: number = DOTS_PER_INCH): Uint8Array => {
	const across = Math.round((drawing.width / POINTS_PER_INCH) * dotsPerInch);
	const picture = new Resvg(renderSvg(drawing, { embedFonts: false }), {
		background: "#ffffff",
		fitTo: { mode: "width", value: across },
		font: {
			fontFiles: FACES.map((face) => face.path),
			loadSystemFonts: false,
			defaultFontFamily: FAMILY,
		},
	});
	return withResolution(new Uint8Array(picture.render().asPng()), dotsPerInch);
};
