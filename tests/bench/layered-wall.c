/*
 * The fixed rule of `fixedRuleTransmissionLoss` in plain scalar C: same formulas, same order, same constants kept out of the
 * loop over angles. Reads one text file of numbers, prints the nanoseconds of the whole computation, then one line of 21
 * values in dB per wall.
 *
 * Input: sound speed, density, pressure and viscosity of the air, Prandtl number, samples per band, number of bands, their
 * lower edges and upper edges, number of angles, their cosines and weights, number of walls, and per wall 16 numbers:
 * screen (flow resistance, mass), two porous layers (thickness, flow resistivity, density), sheet (mass), gap (thickness),
 * plate (thickness, density, modulus, Poisson's ratio, loss factor) and 0.
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#define PI 3.14159265358979323846
#define WALL 16
#define MOST_ANGLES 256

typedef struct { double re, im; } complex_;

static complex_ times(complex_ a, complex_ b) { return (complex_){a.re * b.re - a.im * b.im, a.re * b.im + a.im * b.re}; }
static complex_ over(complex_ a, complex_ b) {
  double size = b.re * b.re + b.im * b.im;
  return (complex_){(a.re * b.re + a.im * b.im) / size, (a.im * b.re - a.re * b.im) / size};
}
static complex_ scaled(complex_ a, double by) { return (complex_){a.re * by, a.im * by}; }
static complex_ root(complex_ a) {
  double size = hypot(a.re, a.im);
  if (size == 0) return (complex_){0, 0};
  double re = sqrt((size + fabs(a.re)) / 2), im = fabs(a.im) / (2 * re), sign = a.im < 0 ? -1 : 1;
  return a.re >= 0 ? (complex_){re, sign * im} : (complex_){im, sign * re};
}
static complex_ tanh_over(complex_ s) {
  complex_ t;
  if (fabs(s.re) > 20) t = (complex_){s.re < 0 ? -1 : 1, 0};
  else {
    double size = cosh(2 * s.re) + cos(2 * s.im);
    t = (complex_){sinh(2 * s.re) / size, sin(2 * s.im) / size};
  }
  return over(t, s);
}

static double sound_speed, density, pressure, viscosity, prandtl;

/* k^2, Z k, depth, what the trace is multiplied by, and the decay that is kept out of the waves. */
typedef struct { complex_ square, product, inverse, trace; double thickness, decay, weakened; } fluid_;

static fluid_ fluid_of(complex_ square, complex_ product, complex_ trace, double thickness, double decay) {
  double size = product.re * product.re + product.im * product.im;
  fluid_ f = {square, product, {product.re / size, -product.im / size}, trace, thickness, decay, exp(-2 * decay) / 4};
  return f;
}

static void passive(complex_ *impedance, complex_ *wavenumber, double omega, int always, complex_ rho, complex_ bulk) {
  if (!always && bulk.im >= 0 && rho.im <= 0) return;
  if (rho.im > 0) rho.im = 0;
  if (bulk.im < 0) bulk.im = 0;
  complex_ slowness = root(over(rho, bulk));
  *impedance = times(bulk, slowness);
  *wavenumber = scaled(slowness, omega);
}

static fluid_ porous(double hz, double thickness, double resistivity, double frame) {
  double omega = 2 * PI * hz, y = hz / resistivity, k = omega / sound_speed, z0 = density * sound_speed;
  double yz = pow(y, -0.632), yk = pow(y, -0.618);
  complex_ z = {z0 * (1 + 0.07 * yz), -z0 * 0.107 * yz}, kc = {k * (1 + 0.109 * yk), -k * 0.16 * yk};
  passive(&z, &kc, omega, 0, scaled(times(z, kc), 1 / omega), scaled(over(z, kc), omega));
  complex_ rho = scaled(times(z, kc), 1 / omega), bulk = scaled(over(z, kc), omega);
  double total = frame + density;
  complex_ top = {rho.re * total - density * density, rho.im * total}, bottom = {rho.re + total - 2 * density, rho.im};
  passive(&z, &kc, omega, 1, over(top, bottom), bulk);
  return fluid_of(times(kc, kc), times(z, kc), (complex_){1, 0}, thickness, fabs(kc.im) * thickness);
}

static fluid_ gap(double hz, double thickness) {
  double omega = 2 * PI * hz, gamma = density * sound_speed * sound_speed / pressure;
  complex_ viscous = scaled(root((complex_){0, omega * density / viscosity}), thickness / 2);
  complex_ v = tanh_over(viscous), t = scaled(tanh_over(scaled(viscous, sqrt(prandtl))), gamma - 1);
  complex_ along = over((complex_){density, 0}, (complex_){1 - v.re, -v.im});
  complex_ bulk = over((complex_){gamma * pressure, 0}, (complex_){1 + t.re, t.im});
  return fluid_of(over((complex_){omega * omega * density, 0}, bulk), (complex_){omega * density, 0},
                  over((complex_){density, 0}, along), thickness, 0);
}

static double pr[MOST_ANGLES], pi_[MOST_ANGLES], vr[MOST_ANGLES], vi[MOST_ANGLES], sine2[MOST_ANGLES];

static void series(int count, double re, double im, double bend_re, double bend_im, double shear) {
  for (int i = 0; i < count; i++) {
    double bend = sine2[i] * sine2[i] / (1 + shear * sine2[i]), zr = re + bend * bend_re, zi = im + bend * bend_im;
    pr[i] += zr * vr[i] - zi * vi[i];
    pi_[i] += zr * vi[i] + zi * vr[i];
  }
}

static void cross(int count, fluid_ f, double wavenumber) {
  double along_re = wavenumber * wavenumber * f.trace.re, along_im = wavenumber * wavenumber * f.trace.im;
  for (int i = 0; i < count; i++) {
    double re = f.square.re - along_re * sine2[i], im = f.square.im - along_im * sine2[i];
    double size = sqrt(re * re + im * im) + 1e-300;
    double larger = sqrt((size + fabs(re)) * 0.5), smaller = fabs(im) * 0.5 / larger;
    double kr = re >= 0 ? larger : smaller, depth = re >= 0 ? smaller : larger;
    double s = sin(kr * f.thickness), c = cos(kr * f.thickness);
    double grow = 0.5 * exp(depth * f.thickness - f.decay), shrink = f.weakened / grow;
    double cosh_ = grow + shrink, up = grow - shrink, ki = im > 0 ? depth : -depth, sinh_ = im > 0 ? up : -up;
    double cos_re = c * cosh_, cos_im = -s * sinh_, sin_re = s * cosh_, sin_im = c * sinh_, per = 1 / size;
    double wr = (sin_re * ki - sin_im * kr) * per, wi = (sin_re * kr + sin_im * ki) * per;
    double forward_re = f.product.re * wr - f.product.im * wi, forward_im = f.product.re * wi + f.product.im * wr;
    double ur = wr * re - wi * im, ui = wr * im + wi * re;
    double back_re = ur * f.inverse.re - ui * f.inverse.im, back_im = ur * f.inverse.im + ui * f.inverse.re;
    double a = pr[i], b = pi_[i], x = vr[i], y = vi[i];
    pr[i] = a * cos_re - b * cos_im + x * forward_re - y * forward_im;
    pi_[i] = a * cos_im + b * cos_re + x * forward_im + y * forward_re;
    vr[i] = x * cos_re - y * cos_im + a * back_re - b * back_im;
    vi[i] = x * cos_im + y * cos_re + a * back_im + b * back_re;
  }
}

static double shear_parameter(const double *w, double omega) {
  double stiffness = w[12] * w[10] * w[10] * w[10] / (12 * (1 - w[13] * w[13])), k = omega / sound_speed;
  return stiffness * k * k / (5.0 / 6 * w[12] / (2 * (1 + w[13])) * w[10]);
}

static double transmission(const double *w, double hz, int angles, const double *cosine, const double *weight) {
  double omega = 2 * PI * hz, k = omega / sound_speed, z0 = density * sound_speed, sum = 0;
  fluid_ air = gap(hz, w[9]), absorber = porous(hz, w[5], w[6], w[7]), wadding = porous(hz, w[2], w[3], w[4]);
  double stiffness = w[12] * w[10] * w[10] * w[10] / (12 * (1 - w[13] * w[13]));
  double critical = sound_speed * sound_speed / (2 * PI) * sqrt(w[10] * w[11] / stiffness);
  double mass = omega * w[10] * w[11], bending = mass * (hz / critical) * (hz / critical);
  complex_ screen = over(times((complex_){w[0], 0}, (complex_){0, omega * w[1]}), (complex_){w[0], omega * w[1]});
  double attenuation = exp(-2 * (absorber.decay + wadding.decay));
  for (int i = 0; i < angles; i++) {
    sine2[i] = 1 - cosine[i] * cosine[i];
    pr[i] = 1;
    pi_[i] = 0;
    vr[i] = cosine[i] / z0;
    vi[i] = 0;
  }
  series(angles, 0, mass, bending * w[14], -bending, shear_parameter(w, omega));
  cross(angles, air, k);
  series(angles, 0, omega * w[8], 0, 0, 0);
  cross(angles, absorber, k);
  cross(angles, wadding, k);
  series(angles, screen.re, screen.im, 0, 0, 0);
  for (int i = 0; i < angles; i++) {
    double q = cosine[i], re = q * pr[i] + z0 * vr[i], im = q * pi_[i] + z0 * vi[i];
    sum += weight[i] * attenuation * 4 * q * q / (re * re + im * im);
  }
  return sum;
}

static double number(FILE *file) {
  double value;
  if (fscanf(file, "%lf", &value) != 1) exit(3);
  return value;
}

int main(int argc, char **argv) {
  FILE *file = argc > 1 ? fopen(argv[1], "r") : NULL;
  if (file == NULL) return 2;
  sound_speed = number(file);
  density = number(file);
  pressure = number(file);
  viscosity = number(file);
  prandtl = number(file);
  int samples = (int)number(file), bands = (int)number(file);
  double lower[64], upper[64], cosine[MOST_ANGLES], weight[MOST_ANGLES];
  if (bands > 64) return 2;
  for (int i = 0; i < bands; i++) lower[i] = number(file);
  for (int i = 0; i < bands; i++) upper[i] = number(file);
  int angles = (int)number(file);
  if (angles > MOST_ANGLES) return 2;
  for (int i = 0; i < angles; i++) cosine[i] = number(file);
  for (int i = 0; i < angles; i++) weight[i] = number(file);
  int walls = (int)number(file);
  double *wall = malloc(sizeof(double) * WALL * walls), *loss = malloc(sizeof(double) * bands * walls);
  for (int i = 0; i < WALL * walls; i++) wall[i] = number(file);
  fclose(file);

  struct timespec start, end;
  clock_gettime(CLOCK_MONOTONIC, &start);
  for (int i = 0; i < walls; i++) {
    for (int band = 0; band < bands; band++) {
      double sum = 0;
      for (int s = 0; s < samples; s++) {
        double hz = lower[band] * pow(upper[band] / lower[band], (s + 0.5) / samples);
        sum += transmission(wall + WALL * i, hz, angles, cosine, weight);
      }
      loss[i * bands + band] = -10 * log10(sum / samples);
    }
  }
  clock_gettime(CLOCK_MONOTONIC, &end);
  printf("%.0f\n", (end.tv_sec - start.tv_sec) * 1e9 + (end.tv_nsec - start.tv_nsec));
  for (int i = 0; i < walls; i++) {
    for (int band = 0; band < bands; band++) printf("%.15g ", loss[i * bands + band]);
    printf("\n");
  }
  return 0;
}
