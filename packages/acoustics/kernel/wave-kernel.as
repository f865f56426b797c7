// Waves through a layered wall, two angles at a time. AssemblyScript; `scripts/write-wave-kernel.mjs` compiles it.
// The same formulas in TypeScript, with what they mean: src/layered/typescript-kernel.ts and cross-fluid.ts.

// Layout of the memory: nine arrays of 64 numbers, the cosines first, one byte for the kind of each operation, eight numbers for each.
const column: usize = 64 * 8;
const PRESSURE_RE: usize = column;
const PRESSURE_IM: usize = 2 * column;
const VELOCITY_RE: usize = 3 * column;
const VELOCITY_IM: usize = 4 * column;
const FIRST_RE: usize = 5 * column;
const FIRST_IM: usize = 6 * column;
const SECOND_RE: usize = 7 * column;
const SECOND_IM: usize = 8 * column;
const KINDS: usize = 9 * column;
const CONSTANTS: usize = KINDS + 64;

const SERIES: u8 = 0;

// @ts-ignore
@inline function all(x: f64): v128 { return f64x2.splat(x); }
// @ts-ignore
@inline function add(a: v128, b: v128): v128 { return f64x2.add(a, b); }
// @ts-ignore
@inline function sub(a: v128, b: v128): v128 { return f64x2.sub(a, b); }
// @ts-ignore
@inline function mul(a: v128, b: v128): v128 { return f64x2.mul(a, b); }
// @ts-ignore
@inline function div(a: v128, b: v128): v128 { return f64x2.div(a, b); }
// @ts-ignore
@inline function number(at: usize, index: usize): f64 { return load<f64>(at + 8 * index); }

/** 1.5 * 2^52: a number of moderate size that is added to it is rounded to an integer, which stands in its lowest bits. */
const ROUNDER: f64 = 6755399441055744;

let sine: v128 = f64x2.splat(0);
let cosine: v128 = f64x2.splat(0);

/**
 * Sine and cosine of phases from 0 to 1e5, in the two globals. The phase is brought to -pi/4 .. pi/4 by three parts of pi/2
 * of 33 bits, then by the polynomials of fdlibm (Sun Microsystems, 1993).
 */
// @ts-ignore
@inline function takeSines(phase: v128): void {
  const rounded = add(mul(phase, all(0.63661977236758134308)), all(ROUNDER));
  const turns = sub(rounded, all(ROUNDER));
  const r = sub(
    sub(sub(phase, mul(turns, all(1.57079632673412561417))), mul(turns, all(6.07710050630396597660e-11))),
    mul(turns, all(2.02226624879595063154e-21)),
  );
  const r2 = mul(r, r);
  const r4 = mul(r2, r2);
  const sineTail = add(
    add(all(-1.66666666666666324348e-1), mul(r2, all(8.33333333332248946124e-3))),
    mul(r4, add(
      add(all(-1.98412698298579493134e-4), mul(r2, all(2.75573137070700676789e-6))),
      mul(r4, add(all(-2.50507602534068634195e-8), mul(r2, all(1.58969099521155010221e-10)))),
    )),
  );
  const cosineTail = add(
    add(all(4.16666666666666019037e-2), mul(r2, all(-1.38888888888741095749e-3))),
    mul(r4, add(
      add(all(2.48015872894767294178e-5), mul(r2, all(-2.75573143513906633035e-7))),
      mul(r4, add(all(2.08757232129817482790e-9), mul(r2, all(-1.13596475577881948265e-11)))),
    )),
  );
  const sinR = add(r, mul(mul(r, r2), sineTail));
  const cosR = add(sub(all(1), mul(r2, all(0.5))), mul(r4, cosineTail));
  const one = i64x2.splat(1);
  const swap = i64x2.sub(i64x2.splat(0), v128.and(rounded, one));
  const signBit = i64x2.splat(0x8000000000000000);
  const s = v128.bitselect(cosR, sinR, swap);
  const c = v128.bitselect(sinR, cosR, swap);
  sine = v128.xor(s, v128.and(i64x2.shl(rounded, 62), signBit));
  cosine = v128.xor(c, v128.and(i64x2.shl(i64x2.add(rounded, one), 62), signBit));
}

/** exp(x)/2 for -700 <= x <= 700; beyond that the value at the limit. */
// @ts-ignore
@inline function halfExponential(x: v128): v128 {
  const held = f64x2.pmax(f64x2.pmin(x, all(700)), all(-700));
  const rounded = add(mul(held, all(1.44269504088896338700)), all(ROUNDER));
  const doublings = sub(rounded, all(ROUNDER));
  const r = sub(
    sub(held, mul(doublings, all(6.93147180369123816490e-1))),
    mul(doublings, all(1.90821492927058770002e-10)),
  );
  const r2 = mul(r, r);
  const r4 = mul(r2, r2);
  // Taylor up to r^12; what is left out is below 2e-16.
  const low = add(
    add(all(1), r),
    mul(r2, add(all(0.5), mul(r, all(1.0 / 6)))),
  );
  const middle = add(
    add(all(1.0 / 24), mul(r, all(1.0 / 120))),
    mul(r2, add(all(1.0 / 720), mul(r, all(1.0 / 5040)))),
  );
  const high = add(
    add(all(1.0 / 40320), mul(r, all(1.0 / 362880))),
    mul(r2, add(add(all(1.0 / 3628800), mul(r, all(1.0 / 39916800))), mul(r2, all(1.0 / 479001600)))),
  );
  const series = add(low, mul(r4, add(middle, mul(r4, high))));
  const scale = i64x2.shl(i64x2.add(rounded, i64x2.splat(1022)), 52);
  return mul(series, scale);
}

// A copy for the rare calls keeps the module below the 4096 bytes that a browser compiles without waiting.
function halfExponentialOnce(x: f64): v128 { return halfExponential(all(x)); }

function crossSeries(at: usize, bytes: usize): void {
  const re = all(number(at, 0));
  const im = all(number(at, 1));
  const bendRe = all(number(at, 2));
  const bendIm = all(number(at, 3));
  const shear = all(number(at, 4));
  for (let i: usize = 0; i < bytes; i += 16) {
    const q = v128.load(i);
    const s = sub(all(1), mul(q, q));
    const bend = div(mul(s, s), add(all(1), mul(shear, s)));
    const zr = add(re, mul(bend, bendRe));
    const zi = add(im, mul(bend, bendIm));
    const vr = v128.load(i, VELOCITY_RE);
    const vi = v128.load(i, VELOCITY_IM);
    v128.store(i, add(v128.load(i, PRESSURE_RE), sub(mul(zr, vr), mul(zi, vi))), PRESSURE_RE);
    v128.store(i, add(v128.load(i, PRESSURE_IM), add(mul(zr, vi), mul(zi, vr))), PRESSURE_IM);
  }
}

function crossFluid(at: usize, traceSquared: f64, bytes: usize): void {
  const productRe = all(number(at, 2));
  const productIm = all(number(at, 3));
  const thickness = all(number(at, 4));
  const alongRe = traceSquared * number(at, 5);
  const alongIm = traceSquared * number(at, 6);
  // k_z^2 by what is left of it at grazing incidence; the small number keeps sin(k_z d)/k_z finite there.
  const grazingRe = all(number(at, 0) - alongRe + 1e-150);
  const grazingIm = all(number(at, 1) - alongIm);
  const decay = all(number(at, 7));
  const productSize = add(mul(productRe, productRe), mul(productIm, productIm));
  const inverseRe = div(productRe, productSize);
  const inverseIm = div(f64x2.neg(productIm), productSize);
  const weakened = mul(halfExponentialOnce(-2 * number(at, 7)), all(0.5));
  const signBit = i64x2.splat(0x8000000000000000);
  for (let i: usize = 0; i < bytes; i += 16) {
    const q = v128.load(i);
    const q2 = mul(q, q);
    const re = add(grazingRe, mul(all(alongRe), q2));
    const im = add(grazingIm, mul(all(alongIm), q2));
    const size = f64x2.sqrt(add(mul(re, re), mul(im, im)));
    const larger = f64x2.sqrt(mul(add(size, f64x2.abs(re)), all(0.5)));
    const smaller = div(mul(f64x2.abs(im), all(0.5)), larger);
    const per = div(all(1), size);
    const travels = f64x2.ge(re, all(0));
    const kr = v128.bitselect(larger, smaller, travels);
    const depth = v128.bitselect(smaller, larger, travels);
    takeSines(mul(kr, thickness));
    const sin = sine;
    const cos = cosine;
    const grow = halfExponential(sub(mul(depth, thickness), decay));
    const shrink = div(weakened, grow);
    // The sign of the imaginary part of the root is that of its square.
    const sign = v128.andnot(signBit, f64x2.gt(im, all(0)));
    const cosh = add(grow, shrink);
    const sinh = v128.xor(sub(grow, shrink), sign);
    const ki = v128.xor(depth, sign);
    const cosRe = mul(cos, cosh);
    const cosIm = f64x2.neg(mul(sin, sinh));
    const sinRe = mul(sin, cosh);
    const sinIm = mul(cos, sinh);
    const wr = mul(sub(mul(sinRe, ki), mul(sinIm, kr)), per);
    const wi = mul(add(mul(sinRe, kr), mul(sinIm, ki)), per);
    const forwardRe = sub(mul(productRe, wr), mul(productIm, wi));
    const forwardIm = add(mul(productRe, wi), mul(productIm, wr));
    const ur = sub(mul(wr, re), mul(wi, im));
    const ui = add(mul(wr, im), mul(wi, re));
    const backRe = sub(mul(ur, inverseRe), mul(ui, inverseIm));
    const backIm = add(mul(ur, inverseIm), mul(ui, inverseRe));
    const pr = v128.load(i, PRESSURE_RE);
    const pi = v128.load(i, PRESSURE_IM);
    const vr = v128.load(i, VELOCITY_RE);
    const vi = v128.load(i, VELOCITY_IM);
    v128.store(i, sub(add(sub(mul(pr, cosRe), mul(pi, cosIm)), mul(vr, forwardRe)), mul(vi, forwardIm)), PRESSURE_RE);
    v128.store(i, add(add(add(mul(pr, cosIm), mul(pi, cosRe)), mul(vr, forwardIm)), mul(vi, forwardRe)), PRESSURE_IM);
    v128.store(i, sub(add(sub(mul(vr, cosRe), mul(vi, cosIm)), mul(pr, backRe)), mul(pi, backIm)), VELOCITY_RE);
    v128.store(i, add(add(add(mul(vr, cosIm), mul(vi, cosRe)), mul(pr, backIm)), mul(pi, backRe)), VELOCITY_IM);
  }
}

function weakenMarks(decay: f64, bytes: usize): void {
  const factor = mul(halfExponentialOnce(-decay), all(2));
  for (let i: usize = 0; i < bytes; i += 16) {
    v128.store(i, mul(v128.load(i, FIRST_RE), factor), FIRST_RE);
    v128.store(i, mul(v128.load(i, FIRST_IM), factor), FIRST_IM);
    v128.store(i, mul(v128.load(i, SECOND_RE), factor), SECOND_RE);
    v128.store(i, mul(v128.load(i, SECOND_IM), factor), SECOND_IM);
  }
}

function mark(to: usize, bytes: usize): void {
  memory.copy(to, VELOCITY_RE, bytes);
  memory.copy(to + column, VELOCITY_IM, bytes);
}

/** Follows the first `count` waves, an odd one with an idle neighbour, through `operations` operations. */
export function propagate(operations: i32, count: i32, wavenumber: f64, first: i32, second: i32): void {
  const bytes: usize = ((count + 1) >> 1) << 4;
  const marked = first >= 0 || second >= 0;
  let at: usize = CONSTANTS;
  for (let index: i32 = 0; index < operations; index++) {
    const kind = load<u8>(KINDS + index);
    if (kind == SERIES) crossSeries(at, bytes);
    else {
      crossFluid(at, wavenumber * wavenumber, bytes);
      const decay = number(at, 7);
      if (marked && decay > 0) weakenMarks(decay, bytes);
    }
    if (index == first) mark(FIRST_RE, bytes);
    if (index == second) mark(SECOND_RE, bytes);
    at += 64;
  }
}
