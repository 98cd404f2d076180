# METADATA
# title: The pressure does not drive the planned flow
# description: |
#   The parts take more pressure at the planned rate than there is to drive the liquid. Somebody then
#   raises the pressure on the day. This is a planning figure: where a property is missing there is
#   none.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: flows
#   scope: [flow_stated]
#   needs: []
#   absent: [flows.drop_kpa, flows.driving_kpa]
#   message: "The planned flow in run {run} takes {need_kpa}, and {have_kpa} drives it"
#   action: >-
#     Plan a lower flow, or fit wider or shorter parts; do not raise the pressure beyond what this sheet
#     was checked for.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.flow.pressure_does_not_reach

report contains {"subject": f.id, "run": f.id, "have_kpa": f.driving_kpa, "need_kpa": f.drop_kpa} if {
	some f in input.flows
	f.flow_stated
	f.drop_kpa > f.driving_kpa
}
