# METADATA
# title: A fitting for LP-gas is rated below what the law asks
# description: |
#   The US LP-gas rule wants valves and fittings of 250 psig where the line runs above 125 psig, and of
#   125 psig everywhere else, whatever the pressure on the day.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: capacities
#   scope: ["what=body", "regime=29 CFR 1910.110"]
#   needs: [capacities.rated_kpa]
#   absent: [cases.pressure_kpa]
#   message: "{part} is rated {have_kpa}; the LP-gas rule asks for {need_kpa} here"
#   action: "Fit a part rated for LP-gas service at this pressure."
#   basis:
#     - document: 29 CFR 1910.110
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(8)(v)"
#       standing: published
package rules.pressure.lpg_fitting_below_law

report contains {
	"subject": c.id,
	"part": c.part,
	"have_kpa": c.rated_kpa,
	"need_kpa": _least(p.run),
} if {
	"29 CFR 1910.110" in input.line.regimes
	some c in input.capacities
	c.what == "body"
	some p in input.parts
	p.id == c.part
	some h in input.hoses
	h.run == p.run
	h.carries_lpg
	c.rated_kpa < _least(p.run)
}

# 125 psig = 861.8 kPa and 250 psig = 1723.7 kPa, rounded down like the rating they are compared with.
_least(run) := 1723 if _above_125_psig(run)

else := 861

# The operating pressure is rounded up: at 862 the line may run at 125 psig exactly.
_above_125_psig(run) if {
	some k in input.cases
	k.run == run
	k.case in {"duty", "vapour-pressure"}
	k.pressure_kpa > 862
}
