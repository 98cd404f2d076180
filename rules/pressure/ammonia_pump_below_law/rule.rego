# METADATA
# title: An ammonia pump is rated below what the law asks
# description: |
#   The US ammonia rule fixes a least working pressure for every pump that moves ammonia.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: capacities
#   scope: ["what=body", "regime=29 CFR 1910.111"]
#   needs: [capacities.rated_kpa]
#   message: "Pump {part} is rated {have_kpa}; the ammonia rule asks for {need_kpa}"
#   action: "Use a pump made for ammonia with at least this working pressure."
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(12)(v)(a)"
#       standing: published
package rules.pressure.ammonia_pump_below_law

report contains {"subject": c.id, "part": c.part, "have_kpa": c.rated_kpa, "need_kpa": _least} if {
	"29 CFR 1910.111" in input.line.regimes
	some c in input.capacities
	c.what == "body"
	some p in input.parts
	p.id == c.part
	p.kind == "pump"
	c.rated_kpa < _least
}

# 250 psig = 1723.7 kPa, rounded down like the rating it is compared with.
_least := 1723
