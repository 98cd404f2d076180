# METADATA
# title: A relief valve on liquid LP-gas is set outside the window of the law
# description: |
#   The US rule for liquefied petroleum gas caps the set pressure of a hydrostatic relief valve. Where
#   the piping is joined to DOT cylinders it must not open too early either, or it lets gas off on a hot
#   day.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: reliefs
#   scope: [on_lpg_liquid, "regime=29 CFR 1910.110"]
#   needs: [reliefs.set_kpa]
#   absent: [vessels.kind]
#   message: "{part} is set at {have_kpa}; on liquid LP-gas the law allows {bound} {need_kpa}"
#   action: "Fit a hydrostatic relief valve of the right setting, or have it reset by its maker."
#   basis:
#     - document: 29 CFR 1910.110
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(10)(xii)"
#       standing: published
package rules.expansion.lpg_relief_outside_window

report contains {
	"subject": r.id,
	"part": r.id,
	"bound": "no more than",
	"have_kpa": r.set_kpa,
	"need_kpa": _highest,
} if {
	some r in _judged
	r.set_kpa > _highest
}

report contains {
	"subject": r.id,
	"part": r.id,
	"bound": "no less than",
	"have_kpa": r.set_kpa,
	"need_kpa": _lowest,
} if {
	some v in input.vessels
	_bottle(v)
	some r in _judged
	r.set_kpa < _lowest
}

_judged contains r if {
	"29 CFR 1910.110" in input.line.regimes
	some r in input.reliefs
	r.on_lpg_liquid
}

# A cylinder of flammable liquid is the DOT container the piping is joined to. Of other containers the facts do not hold
# the relief setting that the law compares with, so the lower bound is left to the reader.
_bottle(v) if {
	v.kind == "cylinder"
	v.holds_flammable
	v.holds_liquid
}

# 500 psig = 3447.4 kPa and 400 psig = 2757.9 kPa, rounded up like the set pressure they are compared with.
_highest := 3448

_lowest := 2758
