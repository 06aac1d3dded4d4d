#version 330 core
// Colour = vertex colour, linear between vertices (barycentric interpolation). Source: OpenGL 3.3
// core specification, section 3.6.1.
in vec4 colour;
out vec4 pixel;

void main() {
  pixel = colour;
}
