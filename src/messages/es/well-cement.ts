import type { WELL_CEMENT as ENGLISH } from "../en/well-cement.ts";
import type { Translation } from "../entries.ts";

export const WELL_CEMENT: Translation<typeof ENGLISH> = {
	"well/slurry-figures.what": "a la lechada {role} le falta: {missing}",
	"well/slurry-figures.expected":
		"densidad, rendimiento y agua; o los componentes, con el agua de mezcla o la densidad deseada",
	"well/slurry-figures.mend":
		"agregue los datos del laboratorio, o `components: []` si el cemento se mezcla solo con agua",
	"well/slurry-material.what":
		"{material} no es un material conocido aquí, y no se indicó su gravedad específica",
	"well/slurry-material.has-no-amount": "{material} no tiene cantidad",
	"well/slurry-material.has-more-than-one-amount": "{material} tiene más de una cantidad",
	"well/slurry-material.expected": "`specific_gravity`, o uno de: {cementAdditives}",
	"well/slurry-material.one-share-share-water-and": "uno de `share`, `share_of_water` y `volume`",
	"well/slurry-material.mend": "indique la gravedad específica de su hoja técnica",
	"well/slurry-material.leave-one-amount": "deje una sola cantidad",
	"well/cement-class.what": "esta clase de cemento no se conoce aquí",
	"well/cement-class.expected": "una de: {cementClasses}",
	"well/cement-class.mend":
		"corrija la clase; de todos modos se usan la densidad, el rendimiento y el agua de la propia lechada",
	"well/top-below-bottom.slurry-string-ends-at-or":
		"la lechada {role} de la TR {string} termina en su cima o por encima de ella",
	"well/top-below-bottom.its-top": "su cima",
	"well/stage-tool.what": "la herramienta de etapas de la TR {string} no está dentro de la sarta",
	"well/stage-tool.expected": "entre {top} y el cople flotador a {collar}",
	"well/stage-tool.mend": "corrija la profundidad de la herramienta",
	"well/stage-tool.slurry-string-reaches-across-stage":
		"la lechada {role} de la TR {string} cruza la herramienta de etapas",
	"well/stage-tool.slurry-that-begins-at-tool":
		"una lechada que empiece en la herramienta, a {tool}, o que termine en ella o más abajo",
	"well/stage-tool.part-slurry-at-tool-or":
		"divida la lechada en la herramienta, o corrija sus profundidades",
	"well/stage-tool.label": "la herramienta de etapas",
	"well/stage-tool.no-slurry-string-begins-at":
		"ninguna lechada de la TR {string} empieza en su herramienta de etapas",
	"well/stage-tool.second-stage-that-begins-at":
		"una segunda etapa que empiece en la herramienta y suba desde ella",
	"well/stage-tool.add-slurry-second-stage-or":
		"agregue la lechada de la segunda etapa, o corrija la profundidad de la herramienta",
	"well/stage-tool.nearest-begins-here": "la más cercana empieza aquí",
	"well/slurry-meeting.what": "las lechadas {role} y {role2} de la TR {string} dejan un hueco de {step}",
	"well/slurry-meeting.and-slurries-string-overlap-by":
		"las lechadas {role} y {role2} de la TR {string} se traslapan {step}",
	"well/slurry-meeting.expected": "una lechada que termine a {bottom}",
	"well/slurry-meeting.mend": "haga que las dos se encuentren en una misma profundidad",
	"well/slurry-meeting.label": "la lechada {role} empieza aquí",
	"well/slurry-bottom.what": "la columna de cemento de la TR {string} no empieza en su zapata",
	"well/slurry-bottom.mend": "haga que la lechada más profunda empiece en la zapata",
	"well/slurry-bottom.label": "la zapata",
	"well/slurry-top.what": "la lechada {role} de la TR {string} termina por encima del nivel del terreno",
	"well/slurry-top.slurry-string-ends-above-top":
		"la lechada {role} de la TR {string} termina por encima de la cima de la sarta",
	"well/slurry-top.expected": "`surface`, o una profundidad bajo el nivel del terreno",
	"well/slurry-top.at-least": "al menos {ceiling}",
	"well/slurry-top.mend": "escriba `surface` para cemento que llega al nivel del terreno",
	"well/slurry-top.end-column-at-top-string":
		"termine la columna en la cima de la sarta; lo que se bombee de más va en el exceso",
	"well/no-caliper.what": "los volúmenes deben salir del calibrador, y el agujero {hole} no lo tiene",
	"well/no-caliper.expected": "`caliper` o `actual.washout` de ese agujero",
	"well/no-caliper.mend": "nombre el registro, anote el ensanchamiento, o escriba `washed-out hole`",
	"well/sacks-volume.what":
		"los sacos y el rendimiento de la lechada {role} dan un volumen distinto del indicado",
	"well/sacks-volume.expected": "cerca de {mixed}, que son {sacks} sacos de {slurryYield}",
	"well/sacks-volume.mend": "corrija el que esté mal, o indique solo los sacos o el volumen",
	"well/sacks-volume.label": "los sacos",
	"well/neat-slurry.what":
		"{others} de la lechada {role} son los de la clase {row} mezclada solo con agua, y el valor de {odd} no lo es",
	"well/neat-slurry.expected": "cerca de {row}",
	"well/neat-slurry.mend": "corrija el valor de {odd}; o nombre en `additives` qué más lleva la mezcla",
};
