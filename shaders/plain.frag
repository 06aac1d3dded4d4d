#version 330 core
// One look-up of a texture, linear between texels (OpenGL 3.3 core specification, section 3.8.11).
uniform sampler2D picture;
in vec2 at;
out vec4 pixel;

void main() {
  pixel = texture(picture, at);
}
