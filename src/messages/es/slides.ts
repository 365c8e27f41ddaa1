import type { SLIDES as ENGLISH } from "../en/slides.ts";
import type { Translation } from "../entries.ts";

export const SLIDES: Translation<typeof ENGLISH> = {
	"slides/form.lacks": 'a una diapositiva le falta "{name}"',
	"slides/form.what": '"{name}" no es lo que una diapositiva lleva ahí',
	"slides/form.mend": "dé a cada una title y say; el README de las diapositivas trae un ejemplo",
	"slides/place.what": 'ninguna diapositiva se llama "{name}"',
	"slides/place.mend": "nombre la diapositiva a la que sigue, o no lo escriba",
	"slides/value.unknown": '"{name}" no es un valor que una diapositiva pueda decir',
	"slides/value.near": 'escriba "{name}", si eso es lo que quiere decir',
	"slides/value.words": "escriba uno de estos nombres, o dígalo con palabras",
	"slides/value.missing": '"{name}" no se conoce de {well}',
	"slides/value.given": "lo que la definición da, o lo que resulta de ella",
	"slides/value.give": "delo en la definición, o quítelo de la diapositiva",
	"slides/words.title": "estas palabras llevan un valor",
	"slides/words.alone": "solo palabras",
	"slides/words.below": "ponga el número en say o en answer",
	"slides/words.brace": "hay una llave suelta",
	"slides/words.named": "el nombre de un valor entre dos llaves",
	"slides/words.close": "cierre la llave, o quítela",
	"slides/words.markdown": 'estas palabras llevan lo que ahí no se muestra: "{kind}"',
	"slides/words.blocks": "párrafos y listas, con negritas o cursivas",
	"slides/words.sentences": "oraciones, con negritas o cursivas",
	"slides/words.plain": "dígalo en oraciones",
};
