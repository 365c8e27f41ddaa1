import type { WELL_SEAL as ENGLISH } from "../en/well-seal.ts";
import type { Translation } from "../entries.ts";

export const WELL_SEAL: Translation<typeof ENGLISH> = {
	"well/seal-evidence.no-intervals": "el registro de adherencia no tiene intervalos",
	"well/seal-evidence.both-intervals-and-file":
		"el registro de adherencia tiene `intervals` y además un `file`",
	"well/seal-evidence.one-of-the-two": "`intervals`, o un `file` con lo mismo",
	"well/seal-evidence.keep-one": "escriba los intervalos en uno solo de los dos lugares",
	"well/seal-evidence.full-not-below-free":
		"la amplitud con adherencia total no es menor que la de tubería libre",
	"well/seal-evidence.less-than": "menos de {than}",
	"well/seal-evidence.swap-amplitudes": "intercambie las dos amplitudes o corríjalas",
	"well/seal-evidence.intervals-overlap": "este intervalo empieza arriba de la base del anterior",
	"well/seal-evidence.at-or-below": "{bottom} o más profundo",
	"well/seal-evidence.from-the-top-down": "escriba los intervalos de arriba hacia abajo, sin traslape",
	"well/seal-evidence.quality-unknown": "la calidad no es uno de los grados",
	"well/seal-evidence.write-one-of-them": "escriba uno de los grados",
	"well/seal-evidence.ends-above-its-top": "el tramo termina en su cima o arriba de ella",
	"well/seal-evidence.below": "más profundo que {top}",
	"well/seal-evidence.swap-depths": "intercambie las dos profundidades o corríjalas",
	"well/seal-evidence.reaches-below-shoe": "el tramo pasa debajo de la zapata de su TR",
	"well/seal-evidence.at-most": "{shoe} o más somero",
	"well/seal-evidence.end-at-shoe": "termínelo en la zapata, o páselo a la TR siguiente",
};
