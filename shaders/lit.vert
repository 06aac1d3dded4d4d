#version 330 core
// Luminance of a level painted surface (see coat.glsl, cones.glsl), at the vertex, times exposure.
layout(location = 0) in vec3 place;
//! include coat.glsl
//! include cones.glsl
uniform mat4 camera;
uniform vec3 eye;
uniform vec3 axisU;
uniform vec3 axisV;
uniform vec3 axisN;
uniform float paperBody[STEPS + 1];
uniform float paperAlpha;
uniform float exposure;
out float light;

void main() {
  vec3 to = normalize(eye - place);
  vec3 o = vec3(dot(to, axisU), dot(to, axisV), dot(to, axisN));
  light = exposure * luminance(paperBody, paperAlpha, vec3(0.0, 0.0, 1.0), o);
  gl_Position = camera * vec4(place, 1.0);
}
