#version 330 core
// Multiplies what is there by the ratio of ridge.vert (blend: destination x source).
in float ratio;
out vec4 pixel;

void main() {
  pixel = vec4(vec3(min(ratio, 16.0)), 1.0);
}
