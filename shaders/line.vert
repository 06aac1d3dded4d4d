#version 330 core
// A line of constant width in pixels: each end is moved by half the width
// and half a pixel for its rim, along the screen normal of the projected segment,
// n = (-d.y, d.x) / |d|, d = q - p in pixels. Source: plane geometry.
layout(location = 0) in vec3 place;
layout(location = 1) in vec3 other;
layout(location = 2) in float side;
layout(location = 3) in vec4 paint;
uniform mat4 camera;
uniform vec2 screen;
uniform float width;
uniform float pull;
out vec4 colour;
noperspective out float across; // pixels from the middle of the line

void main() {
  vec4 p = camera * vec4(place, 1.0);
  vec4 q = camera * vec4(other, 1.0);
  // A far end behind the eye would turn the direction round: stop just before the eye.
  if (q.w < 0.01 && p.w > 0.01) {
    q = mix(p, q, (p.w - 0.01) / (p.w - q.w));
  }
  vec2 d = (q.xy / q.w - p.xy / p.w) * screen;
  vec2 n = length(d) > 1e-6 ? normalize(vec2(-d.y, d.x)) : vec2(0.0);
  colour = paint;
  across = side * 0.5 * (max(width, 1.0) + 1.0);
  gl_Position = p;
  gl_Position.xy += n * across * 2.0 * p.w / screen;
  gl_Position.z -= pull * p.w;
}
