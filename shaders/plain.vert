#version 330 core
// The yardstick of the frame bench: the surfaces with one texture and nothing else.
layout(location = 0) in vec3 place;
layout(location = 1) in vec2 where;
uniform mat4 camera;
out vec2 at;

void main() {
  at = where;
  gl_Position = camera * vec4(place, 1.0);
}
