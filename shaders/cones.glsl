// Luminance of a facet under nineteen cones of light, each given by its own light vector D (lx):
//   L = sum over cones of |D| f(n, D/|D|, o) (n . D/|D|).
// A cone stands for light spread over it, which widens the lobe as roughness would: the tilts add in
// square, alpha'^2 = alpha^2 + spread^2. The spread is half the tilt between neighbouring cones
// for smooth lobes, so that their highlights run together, and less for rough ones, which overlap by
// themselves. Flat paint keeps its luminance within a few per cent; eggshell and glossier paint shows
// duller and broader highlights than life at grazing views. Source: Gershun, "The Light Field",
// 1936, for the light vector; the widening is an approximation of ours.
const int CONES = 19;
layout(location = 1) in float row;
uniform samplerBuffer cones;

float widened(float alpha) {
  float spread = max(0.1, 0.22 - 0.45 * alpha);
  return sqrt(alpha * alpha + spread * spread);
}

float luminance(float table[STEPS + 1], float alpha, vec3 n, vec3 o) {
  float wide = widened(alpha);
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
