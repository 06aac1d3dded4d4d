// Luminance of a facet under nineteen cones of light, each given by its own light vector D (lx):
//   L = sum over cones of |D| f(n, D/|D|, o) (n . D/|D|).
// A cone stands for light spread over it, which widens the lobe as roughness would: the tilts add in
// square, alpha'^2 = alpha^2 + SPREAD^2 (SPREAD: about half the tilt between neighbouring
// cones). Source: Gershun, "The Light Field", 1936, for the light vector; the
// widening is an approximation, held to the exact sum by a test.
const int CONES = 19;
const float SPREAD = 0.18;
layout(location = 1) in float row;
uniform samplerBuffer cones;

float luminance(float table[STEPS + 1], float alpha, vec3 n, vec3 o) {
  float wide = sqrt(alpha * alpha + SPREAD * SPREAD);
  float sum = 0.0;
  for (int i = 0; i < CONES; i++) {
    vec3 cone = texelFetch(cones, int(row + 0.5) * CONES + i).xyz;
    float lux = length(cone);
    if (lux > 0.0) {
      sum += lux * reflected(table, wide, n, cone / lux, o);
    }
  }
  return sum;
}
