#version 330 core
// Ratio of a tilted facet's luminance to the level surface's, for multiplying onto it:
//   q = L(n', compound) / L(n, paper), n' = (-g, 1) / |(-g, 1)|, g = slope of the ridge x strength.
// Source: the flank sum of the score (exact in the tilt, attached shadow included), see coat.glsl.
layout(location = 0) in vec3 place;
//! include coat.glsl
//! include cones.glsl
layout(location = 2) in vec3 slope; // u and v components, and 1 on compound, 0 on paper
uniform mat4 camera;
uniform vec3 eye;
uniform vec3 axisU;
uniform vec3 axisV;
uniform vec3 axisN;
uniform float paperBody[STEPS + 1];
uniform float paperAlpha;
uniform float compoundBody[STEPS + 1];
uniform float compoundAlpha;
uniform float strength;
uniform vec3 sun;
uniform float sunLux;
out float ratio;

void main() {
  vec3 to = normalize(eye - place);
  vec3 o = vec3(dot(to, axisU), dot(to, axisV), dot(to, axisN));
  vec3 level = vec3(0.0, 0.0, 1.0);
  vec3 n = normalize(vec3(-strength * slope.xy, 1.0));
  float paperWide = widened(paperAlpha);
  float tiltedWide = slope.z > 0.5 ? widened(compoundAlpha) : paperWide;
  float base = 0.0;
  float tilted = 0.0;
  for (int i = 0; i < CONES; i++) {
    vec3 cone = texelFetch(cones, int(row + 0.5) * CONES + i).xyz;
    float lux = length(cone);
    if (lux > 0.0) {
      vec3 d = cone / lux;
      base += lux * reflected(paperBody, paperWide, level, d, o);
      tilted += lux * (slope.z > 0.5 ? reflected(compoundBody, tiltedWide, n, d, o)
          : reflected(paperBody, tiltedWide, n, d, o));
    }
  }
  if (sunLux > 0.0) {
    base += sunLux * reflected(paperBody, paperAlpha, level, sun, o);
    tilted += slope.z > 0.5 ? sunLux * reflected(compoundBody, compoundAlpha, n, sun, o)
        : sunLux * reflected(paperBody, paperAlpha, n, sun, o);
  }
  ratio = base > 0.0 ? tilted / base : 1.0;
  gl_Position = camera * vec4(place, 1.0);
}
