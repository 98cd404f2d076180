# METADATA
# title: A point of a road tank does not say liquid or vapour
# description: |
#   The US rule for road tanks of liquefied gas wants each inlet and outlet marked by what it leads
#   to. A liquid hose on a vapour point, or the other way, empties or overfills the tank.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: vessels
#   scope: [may_be_road_tank, "regime=49 CFR 178.337-9"]
#   needs: [vessels.phase_marked]
#   message: "A point of {vessel} is not marked liquid or vapour"
#   action: "Mark each inlet and outlet, and read the mark before coupling."
#   basis:
#     - document: 49 CFR 178.337-9
#       edition: "CFR 2015 annual edition"
#       clause: "(c)"
#       standing: published
package rules.marking.road_tank_phase_not_marked

report contains {"subject": v.id, "vessel": v.id} if {
	"49 CFR 178.337-9" in input.line.regimes
	some v in input.vessels
	v.may_be_road_tank
	v.phase_marked == false
}
