// Paint: a diffuse body under a rough clear lobe, the same equations as the Coating that scores.
//   body(i, o) = k (1 - E(i)) (1 - E(o)) / (pi (1 - Emean)); it factors, so one table b(c) = body(c, 1)
//   is enough: body(i, o) = b(i) b(o) / b(1).
//   Source: Kelemen and Szirmay-Kalos, "A microfacet based coupled specular-matte BRDF model", 2001.
//   lobe = F D / (2 (oz sqrt(a2 + (1 - a2) iz^2) + iz sqrt(a2 + (1 - a2) oz^2)))
//   D = a2 / (pi (1 + (a2 - 1) hz^2)^2)   (GGX; Walter, Marschner, Li, Torrance, EGSR 2007)
//   masking height-correlated (Heitz, JCGT 3, 2014); F unpolarised Fresnel, n = 1.5.
const float PI = 3.14159265358979;
const float INDEX = 1.5;
const int STEPS = 32;

float fresnel(float c) {
  float t = sqrt(max(0.0, 1.0 - (1.0 - c * c) / (INDEX * INDEX)));
  float s = (c - INDEX * t) / (c + INDEX * t);
  float p = (INDEX * c - t) / (INDEX * c + t);
  return 0.5 * (s * s + p * p);
}

// b(c), tabulated in sqrt(c), linear between.
float bodyOf(float table[STEPS + 1], float c) {
  float x = sqrt(clamp(c, 0.0, 1.0)) * float(STEPS);
  int i = min(int(x), STEPS - 1);
  return mix(table[i], table[i + 1], x - float(i));
}

float lobe(float alpha, vec3 n, vec3 i, vec3 o, float iz, float oz) {
  vec3 h = i + o;
  float h2 = dot(h, h);
  float hz = dot(h, n);
  float a2 = alpha * alpha;
  float d = 1.0 + (a2 - 1.0) * hz * hz / h2;
  float seenI = oz * sqrt(a2 + (1.0 - a2) * iz * iz);
  float seenO = iz * sqrt(a2 + (1.0 - a2) * oz * oz);
  return fresnel(min(1.0, 0.5 * sqrt(h2))) * a2 / (PI * d * d) / (2.0 * (seenI + seenO));
}

// Luminance per lx of normal illuminance from direction i seen from o, on a facet of normal n, 1/sr.
float reflected(float table[STEPS + 1], float alpha, vec3 n, vec3 i, vec3 o) {
  float iz = dot(n, i);
  float oz = dot(n, o);
  if (i.z <= 0.0 || o.z <= 0.0 || iz <= 0.0 || oz <= 0.0) {
    return 0.0;
  }
  float body = bodyOf(table, iz) * bodyOf(table, oz) / max(1e-9, table[STEPS]);
  return iz * (body + lobe(alpha, n, i, o, iz, oz));
}
