#version 330 core
// Tone curve: y = x up to the knee k = 0.8, then y = k + (1 - k)(1 - exp(-(x - k)/(1 - k))), smooth
// in value and slope; so contrasts below the knee are true. Then the sRGB transfer function
// (IEC 61966-2-1) and half a step of ordered noise, so that a faint ridge is not lost in steps:
// interleaved gradient noise (Jimenez, "Next generation post processing", SIGGRAPH 2014).
uniform sampler2D light;
uniform vec2 corner;
out vec4 pixel;
const float KNEE = 0.8;

float curve(float x) {
  return x <= KNEE ? x : KNEE + (1.0 - KNEE) * (1.0 - exp(-(x - KNEE) / (1.0 - KNEE)));
}

float encoded(float y) {
  return y <= 0.0031308 ? 12.92 * y : 1.055 * pow(y, 1.0 / 2.4) - 0.055;
}

void main() {
  vec3 x = texelFetch(light, ivec2(gl_FragCoord.xy - corner), 0).rgb;
  float noise = fract(52.9829189 * fract(dot(gl_FragCoord.xy, vec2(0.06711056, 0.00583715)))) - 0.5;
  vec3 y = vec3(encoded(curve(x.r)), encoded(curve(x.g)), encoded(curve(x.b)));
  pixel = vec4(y + noise / 255.0, 1.0);
}
