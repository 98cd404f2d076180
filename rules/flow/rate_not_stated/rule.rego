# METADATA
# title: The planned flow is not stated
# description: |
#   Without it nothing can be said of the speed, the pressure drop, boiling in the line or how long the
#   transfer takes.
# schemas:
#   - input: schema.facts
# custom:
#   severity: note
#   subject: flows
#   scope: ["!flow_stated"]
#   needs: []
#   message: >-
#     The planned flow of run {run} is not stated, so its speed, pressure drop and duration were not
#     worked out
#   action: "State the flow of the run, the highest that is planned."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.flow.rate_not_stated

report contains {"subject": f.id, "run": f.id} if {
	some f in input.flows
	not f.flow_stated
}
