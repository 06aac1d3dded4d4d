#version 330 core
// Hands the world place of a sun patch to the fragment.
layout(location = 0) in vec3 place;
uniform mat4 camera;
out vec3 at;

void main() {
  at = place;
  gl_Position = camera * vec4(place, 1.0);
}
