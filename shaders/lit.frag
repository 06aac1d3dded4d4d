#version 330 core
// Light of the display = luminance x exposure x hue; the hue has a luminance of 1 (ITU-R BT.709
// weights), so it changes no luminance. Clamped where the tone curve is white anyway.
in float light;
uniform vec3 hue;
out vec4 pixel;

void main() {
  pixel = vec4(min(light, 4.0) * hue, 1.0);
}
