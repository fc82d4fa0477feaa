import { Matrix, CholeskyDecomposition } from "ml-matrix";

export interface LeastSquaresOptions {
  /** The first so many residuals are measurements and lose weight beyond `robustBeyond` sds (Huber); the rest are priors and do not. */
  readonly measured: number;
  readonly robustBeyond: number;
  /** The step of the numeric derivative, one a parameter. */
  readonly steps: readonly number[];
  readonly mostRounds: number;
}

export interface LeastSquaresFit {
  readonly parameters: readonly number[];
  /** Residuals at the answer, each in its own standard deviations. */
  readonly residuals: readonly number[];
  /** Sum of Huber's loss over the residuals (squares where none is beyond the limit). */
  readonly cost: number;
  readonly converged: boolean;
  /** Row-major, parameters by parameters: the inverse of the weighted normal matrix. Null where the problem leaves a parameter free. */
  readonly covariance: Matrix | null;
}

/**
 * Levenberg-Marquardt with Huber weights over residuals that are already divided by their standard deviations.
 * (Hartley and Zisserman, Multiple View Geometry, 2nd ed., appendix 6.) Stops when a round lowers the cost by under one part in 1e10.
 */
export function fitLeastSquares(
  start: readonly number[],
  residualsOf: (parameters: readonly number[]) => readonly number[],
  options: LeastSquaresOptions,
): LeastSquaresFit {
  let parameters = start;
  let residuals = residualsOf(parameters);
  let cost = costOf(residuals, options);
  let damping = 1e-3;
  let converged = false;
  let normal = normalEquations(parameters, residuals, residualsOf, options);
  for (let round = 0; round < options.mostRounds && !converged; round++) {
    const step = solveDamped(normal, damping);
    const next = step && parameters.map((value, index) => value + step.get(index, 0));
    const nextResiduals = next && residualsOf(next);
    const nextCost = nextResiduals ? costOf(nextResiduals, options) : Infinity;
    if (next && nextResiduals && nextCost <= cost) {
      converged = cost - nextCost <= 1e-10 * cost + 1e-14;
      parameters = next;
      residuals = nextResiduals;
      cost = nextCost;
      damping = Math.max(damping / 8, 1e-12);
      normal = normalEquations(parameters, residuals, residualsOf, options);
    } else {
      damping *= 6;
      converged = damping > 1e12;
    }
  }
  return { parameters, residuals, cost, converged, covariance: inverse(normal.matrix) };
}

interface Normal {
  readonly matrix: Matrix;
  readonly right: Matrix;
}

function normalEquations(
  parameters: readonly number[],
  residuals: readonly number[],
  residualsOf: (parameters: readonly number[]) => readonly number[],
  options: LeastSquaresOptions,
): Normal {
  const jacobian = new Matrix(residuals.length, parameters.length);
  for (const [column, value] of parameters.entries()) {
    const step = options.steps[column] ?? 1e-6;
    const up = residualsOf(parameters.with(column, value + step));
    const down = residualsOf(parameters.with(column, value - step));
    for (let row = 0; row < residuals.length; row++) {
      jacobian.set(row, column, ((up[row] ?? 0) - (down[row] ?? 0)) / (2 * step));
    }
  }
  const right = Matrix.columnVector(Array.from(residuals));
  for (const [row, residual] of residuals.entries()) {
    const root = Math.sqrt(weightOf(residual, row, options));
    jacobian.mulRow(row, root);
    right.mulRow(row, -root);
  }
  const turned = jacobian.transpose();
  return { matrix: turned.mmul(jacobian), right: turned.mmul(right) };
}

function weightOf(residual: number, index: number, options: LeastSquaresOptions): number {
  const size = Math.abs(residual);
  return index >= options.measured || size <= options.robustBeyond ? 1 : options.robustBeyond / size;
}

function costOf(residuals: readonly number[], options: LeastSquaresOptions): number {
  const limit = options.robustBeyond;
  const cost = residuals.reduce((sum, residual, index) => {
    const size = Math.abs(residual);
    return sum + (index >= options.measured || size <= limit ? size * size : limit * (2 * size - limit));
  }, 0);
  return Number.isFinite(cost) ? cost : Infinity;
}

function solveDamped(normal: Normal, damping: number): Matrix | null {
  const damped = normal.matrix.clone();
  for (let i = 0; i < damped.rows; i++) damped.set(i, i, damped.get(i, i) * (1 + damping) + 1e-12);
  const factor = new CholeskyDecomposition(damped);
  return factor.isPositiveDefinite() ? factor.solve(normal.right) : null;
}

function inverse(matrix: Matrix): Matrix | null {
  const factor = new CholeskyDecomposition(matrix);
  if (!factor.isPositiveDefinite()) return null;
  const inverted = factor.solve(Matrix.eye(matrix.rows));
  // Rounding leaves the halves a hair apart, and a covariance must be symmetric to the last bit.
  return Matrix.add(inverted, inverted.transpose()).mul(0.5);
}
