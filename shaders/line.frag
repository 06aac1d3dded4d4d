#version 330 core
// Share of a pixel that a line covers: clamp((w + 1) / 2 - |x|, 0, 1), x the distance of the pixel's
// middle from the line's; a line narrower than a pixel is a pixel wide and that much fainter.
// Source: box filter of a half plane square to the line.
in vec4 colour;
noperspective in float across;
uniform float width;
out vec4 pixel;

void main() {
  float cover = clamp(0.5 * (max(width, 1.0) + 1.0) - abs(across), 0.0, 1.0);
  pixel = vec4(colour.rgb, colour.a * cover * min(width, 1.0));
}
