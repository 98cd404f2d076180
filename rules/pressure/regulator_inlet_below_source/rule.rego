# METADATA
# title: A regulator sees more pressure than its inlet is rated for
# description: |
#   A regulator is made for one range of inlet pressure. Above it the inlet side or its gauge can burst,
#   or the seat gives way and full pressure goes through.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: regulators
#   scope: []
#   needs: [regulators.source_kpa, regulators.inlet_rated_kpa]
#   message: "The inlet of regulator {part} is rated {have_kpa} but its source can reach {need_kpa}"
#   action: "Fit a regulator whose inlet is rated for the full source pressure on the hottest day."
#   basis:
#     - document: 29 CFR 1910.253
#       edition: "CFR 2015 annual edition"
#       clause: "(e)(6)(i)"
#       standing: published
package rules.pressure.regulator_inlet_below_source

report contains {"subject": r.id, "part": r.id, "have_kpa": r.inlet_rated_kpa, "need_kpa": r.source_kpa} if {
	some r in input.regulators
	r.inlet_rated_kpa < r.source_kpa
}
