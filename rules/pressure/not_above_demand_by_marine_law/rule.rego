# METADATA
# title: A hose rating is not above the highest pressure, as marine law asks
# description: |
#   The US rule for oil and hazardous material between vessel and shore wants the working pressure above
#   the relief setting, or the pump's pressure, plus static head. Equal is not enough.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: capacities
#   scope: [is_hose, "regime=33 CFR 154.500"]
#   needs: [capacities.rated_kpa, capacities.demand_kpa]
#   message: "{part} holds {have_kpa}; the law asks for more than the {need_kpa} that {case} can reach"
#   action: "Fit a hose with a higher working pressure, or lower the relief setting."
#   basis:
#     - document: 33 CFR 154.500
#       edition: "CFR 2015 annual edition"
#       clause: "(b)"
#       standing: published
package rules.pressure.not_above_demand_by_marine_law

report contains {
	"subject": c.id,
	"part": c.part,
	"case": c.case,
	"have_kpa": c.rated_kpa,
	"need_kpa": c.demand_kpa,
} if {
	"33 CFR 154.500" in input.line.regimes
	some c in input.capacities
	c.is_hose
	c.rated_kpa <= c.demand_kpa
}
