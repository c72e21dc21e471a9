/** Drawings to scale, as shapes and labels: it knows neither pages nor colors, and no label lies on another. */
@org.jspecify.annotations.NullMarked
package bayfolio.drawing;
