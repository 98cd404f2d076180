# METADATA
# title: A rating is nearer to the highest pressure than the site allows
# description: |
#   The site wants a reserve above what the line can reach. A part that holds the pressure, but without
#   that reserve, is found here; one that does not hold it at all is found by the rules of the program.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: capacities
#   scope: []
#   needs: [capacities.rated_kpa, capacities.demand_kpa]
#   message: >-
#     {what} of {part} is good for {have_kpa}, {case} can reach {need_kpa}: less in reserve than the
#     {margin_permille} that the site wants
#   action: "Fit a part with a higher rating, or lower the pressure that the source can give."
#   basis:
#     - document: the site's own limit
#       edition: "limits.yaml"
#       clause: pressure_margin_permille
#       standing: site
package site.pressure.margin_too_thin

report contains {
	"subject": c.id,
	"part": c.part,
	"what": c.what,
	"case": c.case,
	"have_kpa": c.rated_kpa,
	"need_kpa": c.demand_kpa,
	"margin_permille": margin,
} if {
	margin := data.site.limits.pressure_margin_permille
	some c in input.capacities
	c.rated_kpa >= c.demand_kpa
	1000 * c.rated_kpa < (1000 + margin) * c.demand_kpa
}
