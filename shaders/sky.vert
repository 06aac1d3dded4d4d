#version 330 core
// Luminance of sky and ground times exposure; the values are the sky model's own.
layout(location = 0) in vec3 place;
layout(location = 1) in vec4 paint;
uniform mat4 camera;
uniform float exposure;
out vec4 colour;

void main() {
  colour = vec4(min(paint.rgb * exposure, vec3(4.0)), 1.0);
  gl_Position = camera * vec4(place, 1.0);
}
