# METADATA
# title: Aluminium tube for LP-gas sees more pressure than the law allows
# description: |
#   The US LP-gas rule takes aluminium tube up to three quarters of an inch outside and 20 psig, and not
#   where it is outdoors, buried or damp.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: capacities
#   scope: ["what=body", "regime=29 CFR 1910.110"]
#   needs: [capacities.demand_kpa]
#   message: >-
#     {part} is of aluminium and sees up to {demand_kpa}; the LP-gas rule ends aluminium tube at
#     {most_kpa}
#   action: "Use steel, copper or brass tube of the right wall."
#   basis:
#     - document: 29 CFR 1910.110
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(8)(ii)"
#       standing: published
package rules.material.lpg_aluminium_tube_above_law

report contains {
	"subject": c.id,
	"part": c.part,
	"demand_kpa": c.demand_kpa,
	"most_kpa": _most_kpa,
} if {
	"29 CFR 1910.110" in input.line.regimes
	some c in input.capacities
	c.what == "body"
	some p in input.parts
	p.id == c.part
	p.kind == "pipe"
	some group in {"limited", "suitable", "unlisted"}
	some x in input.pairs[group]
	x.part == c.part
	x.material in {"A03560", "A96061"}
	c.demand_kpa > _most_kpa
}

# 20 psig = 137.9 kPa, rounded up like the pressure it is compared with.
_most_kpa := 138
