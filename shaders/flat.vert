#version 330 core
// Clip position p = M x (homogeneous projection). Source: Roberts, "Homogeneous matrix
// representation", MIT Lincoln Laboratory, 1965.
layout(location = 0) in vec3 place;
layout(location = 1) in vec4 paint;
uniform mat4 camera;
out vec4 colour;

void main() {
  colour = paint;
  gl_Position = camera * vec4(place, 1.0);
}
