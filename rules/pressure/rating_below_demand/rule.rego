# METADATA
# title: A part is rated below the highest pressure the line can reach
# description: |
#   A line is as strong as its weakest part at its own temperature. The pressure that counts is the
#   highest that any case can give, not the usual one.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: capacities
#   scope: ["!accumulates"]
#   needs: [capacities.rated_kpa, capacities.demand_kpa]
#   message: "{part} ({what}) holds {have_kpa}, but {case} can reach {need_kpa}"
#   action: "Fit a part with a higher rating, or limit the source pressure with a relief device."
#   basis:
#     - document: 29 CFR 1926.302
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(5)"
#       standing: published
#     - document: 33 CFR 156.120
#       edition: "CFR 2015 annual edition"
#       clause: "(w)(5)"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.pressure.rating_below_demand

report contains {
	"subject": c.id,
	"part": c.part,
	"what": c.what,
	"case": c.case,
	"have_kpa": c.rated_kpa,
	"need_kpa": c.demand_kpa,
} if {
	some c in input.capacities
	not c.accumulates
	c.rated_kpa < c.demand_kpa
}
