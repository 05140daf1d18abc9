"""Solves a system with scipy as often as it is asked to: the rival of EquationsBench.

Reads a folder with equations.mtx (symmetric), right.txt and pedigree.txt, then a word a line: what to do. Answers with
a number when it is done.
"""

import pathlib
import sys

import numpy
import scipy.io
import scipy.sparse
import scipy.sparse.linalg

folder = pathlib.Path(sys.argv[1])
equations = scipy.io.mmread(folder / "equations.mtx").tocsc()
right = numpy.loadtxt(folder / "right.txt")
draws, rows, columns, shares = [], [], [], []
with open(folder / "pedigree.txt", encoding="utf-8") as lines:
    for plant, line in enumerate(lines):
        draw, *parents = line.split()
        draws.append(float(draw))
        for parent, share in zip(parents[::2], parents[1::2]):
            rows.append(plant)
            columns.append(int(parent))
            shares.append(float(share))
size = len(draws)
passed_down = scipy.sparse.csr_matrix((shares, (rows, columns)), shape=(size, size))


def solution(order):
    """The system is symmetric and positive definite, so pivots stay on the diagonal."""
    factor = scipy.sparse.linalg.splu(
        equations, permc_spec=order, diag_pivot_thresh=0.0, options={"SymmetricMode": True}
    )
    return factor.solve(right)


def inverse():
    """(I - P)' D^-1 (I - P), P the shares of parents and D the draws."""
    own = scipy.sparse.identity(size, format="csr") - passed_down
    return own.T @ scipy.sparse.diags(1 / numpy.array(draws)) @ own


for line in sys.stdin:
    what = line.strip()
    if what == "inverse":
        answer = inverse().sum()
    elif what == "write":
        found = solution("NATURAL")
        numpy.savetxt(folder / "solution.txt", found, fmt="%.17g")
        answer = found[0]
    else:
        answer = solution({"natural": "NATURAL", "ordered": "MMD_AT_PLUS_A"}[what])[0]
    print(answer, flush=True)
