"""One formula, three prints: MathML, plain text, and the text with numbers put in.

A formula is an assignment in Python syntax ("h_f = f * L / D * v**2 / (2 * g)").
It is read with ``ast`` and never executed, so what is printed is what a test
can evaluate.
"""

from __future__ import annotations

import ast
from functools import lru_cache
from html import escape
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Mapping

GREEK = {
    "alpha": "α", "beta": "β", "gamma": "γ", "Delta": "Δ", "delta": "δ", "eps": "ε",
    "zeta": "ζ", "eta": "η", "theta": "θ", "lam": "λ", "mu": "μ", "nu": "ν", "pi": "π",
    "rho": "ρ", "sigma": "σ", "Sigma": "Σ", "tau": "τ", "phi": "φ", "omega": "ω",
}  # fmt: skip
FUNCTIONS = {"sqrt", "log10", "log", "exp", "min", "max", "abs", "sin", "cos", "ceil", "floor"}
_PRINTED = {"log10": "lg", "log": "ln"}
_SUM, _PRODUCT, _POWER, _ATOM = 1, 2, 3, 4


@lru_cache(maxsize=512)
def _parsed(formula: str) -> tuple[str, ast.expr]:
    tree = ast.parse(formula.strip()).body[0]
    match tree:
        case ast.Assign(targets=[ast.Name(id=name)], value=value):
            return name, value
    raise ValueError(f"not one assignment: {formula}")


@lru_cache(maxsize=512)
def mathml(formula: str) -> str:
    """The formula as a MathML ``<math>`` element."""
    name, value = _parsed(formula)
    body = f"<mrow>{_ml_name(name)}<mo>=</mo>{_ml(value)[0]}</mrow>"
    return f'<math display="block" xmlns="http://www.w3.org/1998/Math/MathML">{body}</math>'


def text(formula: str) -> str:
    """The formula as plain text: "h_f = f × L / D × v^2 / (2 × g)"."""
    name, value = _parsed(formula)
    return f"{_tx_name(name)} = {_tx(value, {})[0]}"


def put_in(formula: str, numbers: Mapping[str, str]) -> str:
    """The right-hand side with ``numbers`` (name -> printed number) in place of names."""
    return _tx(_parsed(formula)[1], numbers)[0]


def _parts(name: str) -> tuple[str, str, str]:
    """("Δ", "h", "2") for Delta_h_2: prefix, head, subscript."""
    head, *rest = name.split("_")
    prefix = ""
    if head == "Delta" and rest:
        prefix, head, *rest = "Δ", *rest
    return prefix, GREEK.get(head, head), ",".join(GREEK.get(part, part) for part in rest)


def _ml_name(name: str) -> str:
    prefix, head, below = _parts(name)
    symbol = f"<mi>{escape(head)}</mi>"
    if below:
        symbol = f"<msub>{symbol}<mtext>{escape(below)}</mtext></msub>"
    return f"<mrow><mi>Δ</mi>{symbol}</mrow>" if prefix else symbol


def _tx_name(name: str) -> str:
    prefix, head, below = _parts(name)
    return prefix + head + (f"_{below}" if below else "")


def _factors(node: ast.expr) -> list[tuple[ast.expr, list[ast.expr]]]:
    """A product chain as (numerator, denominators) pairs, in the order written."""
    if isinstance(node, ast.BinOp) and isinstance(node.op, ast.Mult):
        return _factors(node.left) + [(node.right, [])]
    if isinstance(node, ast.BinOp) and isinstance(node.op, ast.Div):
        chain = _factors(node.left)
        top, below = chain[-1]
        return [*chain[:-1], (top, [*below, node.right])]
    return [(node, [])]


def _ml(node: ast.expr) -> tuple[str, int]:
    """(MathML, binding strength) of an expression."""
    match node:
        case ast.Name(id=name):
            return _ml_name(name), _ATOM
        case ast.Constant(value=number):
            return f"<mn>{number!s}</mn>", _ATOM
        case ast.UnaryOp(op=ast.USub(), operand=inner):
            return f"<mrow><mo>−</mo>{_ml_in(inner, _PRODUCT)}</mrow>", _SUM
        case ast.BinOp(op=ast.Add() | ast.Sub() as op, left=left, right=right):
            sign = "+" if isinstance(op, ast.Add) else "−"
            strength = _SUM if sign == "+" else _PRODUCT
            return (
                f"<mrow>{_ml_in(left, _SUM)}<mo>{sign}</mo>{_ml_in(right, strength)}</mrow>",
                _SUM,
            )
        case ast.BinOp(op=ast.Pow(), left=base, right=power):
            return f"<msup>{_ml_in(base, _ATOM, wrap=True)}{_ml_in(power, _SUM)}</msup>", _POWER
        case ast.BinOp(op=ast.Mult() | ast.Div()):
            return _ml_product(node), _PRODUCT
        case ast.Call(func=ast.Name(id="sqrt"), args=[inner]):
            return f"<msqrt>{_ml(inner)[0]}</msqrt>", _ATOM
        case ast.Call(func=ast.Name(id=name), args=args) if name in FUNCTIONS:
            inside = "<mo>,</mo>".join(_ml(arg)[0] for arg in args)
            name = _PRINTED.get(name, name)
            return f"<mrow><mi>{name}</mi><mo>(</mo>{inside}<mo>)</mo></mrow>", _ATOM
    raise ValueError(f"cannot print {ast.dump(node)}")


def _ml_in(node: ast.expr, strength: int, wrap: bool = False) -> str:
    printed, own = _ml(node)
    if own < strength:
        return f"<mrow><mo>(</mo>{printed}<mo>)</mo></mrow>"
    return f"<mrow>{printed}</mrow>" if wrap and not isinstance(node, ast.Name) else printed


def _ml_product(node: ast.expr) -> str:
    printed: list[str] = []
    previous_number = False
    for top, below in _factors(node):
        if below:
            under = (
                "".join(_ml_in(d, _PRODUCT) for d in below) if len(below) > 1 else _ml(below[0])[0]
            )
            part = f"<mfrac><mrow>{_ml(top)[0]}</mrow><mrow>{under}</mrow></mfrac>"
        else:
            part = _ml_in(top, _PRODUCT)
        number = isinstance(top, ast.Constant) and not below
        if printed:
            printed.append("<mo>×</mo>" if number or previous_number and below else "<mo>⁢</mo>")
        previous_number = number
        printed.append(part)
    return f"<mrow>{''.join(printed)}</mrow>"


def _tx(node: ast.expr, numbers: Mapping[str, str]) -> tuple[str, int]:
    """(text, binding strength) of an expression."""
    match node:
        case ast.Name(id=name):
            shown = numbers.get(name, _tx_name(name))
            return shown, _SUM if shown.startswith(("-", "−")) else _ATOM
        case ast.Constant(value=number):
            return str(number), _ATOM
        case ast.UnaryOp(op=ast.USub(), operand=inner):
            return f"−{_tx_in(inner, _PRODUCT, numbers)}", _SUM
        case ast.BinOp(op=ast.Pow(), left=base, right=power):
            return f"{_tx_in(base, _ATOM, numbers)}^{_tx_in(power, _ATOM, numbers)}", _POWER
        case ast.BinOp(op=op, left=left, right=right):
            sign = {ast.Add: "+", ast.Sub: "−", ast.Mult: "×", ast.Div: "/"}[type(op)]
            own = _SUM if sign in "+−" else _PRODUCT
            after = own + 1 if sign in "−/" else own
            return f"{_tx_in(left, own, numbers)} {sign} {_tx_in(right, after, numbers)}", own
        case ast.Call(func=ast.Name(id=name), args=args) if name in FUNCTIONS:
            inside = ", ".join(_tx(arg, numbers)[0] for arg in args)
            return f"{_PRINTED.get(name, name)}({inside})", _ATOM
    raise ValueError(f"cannot print {ast.dump(node)}")


def _tx_in(node: ast.expr, strength: int, numbers: Mapping[str, str]) -> str:
    printed, own = _tx(node, numbers)
    return f"({printed})" if own < strength else printed
