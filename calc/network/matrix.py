"""Linear equations of a network: eliminated node by node, the fewest neighbours first.

In a tree the node with the fewest neighbours is always a leaf, so nothing fills in and the
work is in step with the number of nodes; in a looped network only the loops fill in.  The
matrices here are symmetric and positive definite, so no pivoting is needed.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator


class SingularError(ArithmeticError):
    """The equations have no single answer. ``node``: the unknown at which that shows."""

    def __init__(self, node: int) -> None:
        super().__init__(f"no single answer at unknown {node}")
        self.node = node


@dataclass(frozen=True)
class Elimination:
    """How to eliminate: worked out once for a network, used in every step.

    order: nodes, first eliminated first; later: for each node (other, slot) of the nodes left that
    it touches, with the place of that pair in the flat list of off-diagonals;
    fills: for each node (slot, slot, slot) of two of its pairs and of the pair they fill;
    slot_of: (earlier, later) -> slot; size: number of slots.
    """

    order: tuple[int, ...]
    later: tuple[tuple[tuple[int, int], ...], ...]
    fills: tuple[tuple[tuple[int, int, int], ...], ...]
    slot_of: dict[tuple[int, int], int]
    size: int


@lru_cache(maxsize=64)  # a supply is solved again and again
def eliminate(count: int, pairs: tuple[tuple[int, int], ...]) -> Elimination:
    """Order and places for ``count`` unknowns joined by ``pairs``, least degree first.

    count: unknowns 0..count-1; pairs: (i, j) of unknowns that touch, either way round.
    Returns ``Elimination``.  Raises nothing.
    Source: minimum degree ordering, W. F. Tinney and J. W. Walker, Proc. IEEE 55 (1967) 1801.

    >>> eliminate(3, ((0, 1), (1, 2))).order
    (0, 1, 2)
    """
    touching: list[set[int]] = [set() for _ in range(count)]
    for i, j in pairs:
        if i != j:
            touching[i].add(j)
            touching[j].add(i)
    order: list[int] = []
    later: list[tuple[int, ...]] = [()] * count
    place = [-1] * count
    for node in _least_degree_first(touching):
        near = touching[node]
        place[node] = len(order)
        order.append(node)
        later[node] = near_list = tuple(near)
        for other in near_list:
            touching[other].discard(node)
        if len(near_list) > 1:
            for other in near_list:
                touching[other] |= near
                touching[other].discard(other)
    return _places(tuple(order), tuple(later), place)


def _least_degree_first(touching: list[set[int]]) -> Iterator[int]:
    """Yield nodes by least degree; the caller removes each from ``touching`` as it comes."""
    buckets: dict[int, list[int]] = {}
    for node, near in enumerate(touching):
        buckets.setdefault(len(near), []).append(node)
    for bucket in buckets.values():
        bucket.reverse()  # so that equal degrees come in the order given
    done = [False] * len(touching)
    left, degree = len(touching), 0
    while left:
        bucket = buckets.get(degree, [])
        if not bucket:
            degree += 1
            continue
        node = bucket.pop()
        if done[node] or len(touching[node]) != degree:
            continue
        done[node] = True
        left -= 1
        around = tuple(touching[node])
        yield node
        for other in around:  # their degrees have changed: file them anew
            now = len(touching[other])
            buckets.setdefault(now, []).append(other)
            degree = min(degree, now)


def _places(
    order: tuple[int, ...], later: tuple[tuple[int, ...], ...], place: list[int]
) -> Elimination:
    slot_of: dict[tuple[int, int], int] = {}
    slots: list[tuple[int, ...]] = [()] * len(order)
    for node in order:
        slots[node] = tuple(range(len(slot_of), len(slot_of) + len(later[node])))
        for other in later[node]:
            slot_of[node, other] = len(slot_of)
    fills: list[tuple[tuple[int, int, int], ...]] = [()] * len(order)
    for node in order:
        near, found = later[node], []
        for i, one in enumerate(near):
            for j, two in enumerate(near):
                if place[one] < place[two]:
                    found.append((slots[node][i], slots[node][j], slot_of[one, two]))
        fills[node] = tuple(found)
    pairs = tuple(tuple(zip(*both, strict=True)) for both in zip(later, slots, strict=True))
    return Elimination(order, pairs, tuple(fills), slot_of, len(slot_of))


def solve(
    plan: Elimination, diagonal: list[float], upper: list[float], right: list[float]
) -> list[float]:
    """Solve the symmetric equations; the lists given are used up.

    sum_j a_ij x_j = b_i
    plan: ``Elimination``; diagonal: a_ii; upper: a_ij by slot (i, j); right: b.
    Returns the list x.  Raises SingularError where a pivot is not above zero.
    Source: Gaussian elimination of a symmetric positive matrix.
    """
    later, fills = plan.later, plan.fills
    for node in plan.order:
        pivot = diagonal[node]
        if not pivot > 0.0:
            raise SingularError(node)
        load = right[node]
        for other, spot in later[node]:
            share = upper[spot] / pivot
            diagonal[other] -= share * upper[spot]
            right[other] -= share * load
        for one, two, spot in fills[node]:
            upper[spot] -= upper[one] * upper[two] / pivot
    for node in reversed(plan.order):
        load = right[node]
        for other, spot in later[node]:
            load -= upper[spot] * right[other]
        right[node] = load / diagonal[node]
    return right
