#version 330 core
// Luminance that the sun's own beam adds: E f(n, sun, o) (n . sun), E square to the beam (see
// coat.glsl). Drawn additively: light adds.
//! include coat.glsl
in vec3 at;
uniform vec3 eye;
uniform vec3 axisU;
uniform vec3 axisV;
uniform vec3 axisN;
uniform float paperBody[STEPS + 1];
uniform float paperAlpha;
uniform float exposure;
uniform vec3 sun;
uniform float sunLux;
uniform vec3 hue;
out vec4 pixel;

void main() {
  vec3 to = normalize(eye - at);
  vec3 o = vec3(dot(to, axisU), dot(to, axisV), dot(to, axisN));
  float l = sunLux * reflected(paperBody, paperAlpha, vec3(0.0, 0.0, 1.0), sun, o);
  pixel = vec4(min(exposure * l, 4.0) * hue, 0.0);
}
