#version 330 core
// A kept picture put over what is there, pixel for pixel: texel (x, y) on pixel (x, y), its colour
// already multiplied by its alpha (the over operator; Porter and Duff, "Compositing digital
// images", SIGGRAPH 1984).
uniform sampler2D picture;
out vec4 pixel;

void main() {
  pixel = texelFetch(picture, ivec2(gl_FragCoord.xy), 0);
}
