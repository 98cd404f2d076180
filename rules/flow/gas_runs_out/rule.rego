# METADATA
# title: One cylinder of gas does not move the planned quantity
# description: |
#   The gas that pushes the liquid takes the place of all that has left. When the cylinder runs out the
#   transfer stops half-way with the line full, and a cylinder is changed in a hurry.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: flows
#   scope: [gas_from_cylinders]
#   needs: [flows.cylinders_needed_permille]
#   message: >-
#     The planned quantity of run {run} takes {have_ratio_permille} cylinders of gas, and one is connected
#   action: >-
#     Connect more cylinders to a manifold, or plan the change with the line shut and the pressure let
#     off.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.flow.gas_runs_out

report contains {
	"subject": f.id,
	"run": f.id,
	"have_ratio_permille": f.cylinders_needed_permille,
	"need_ratio_permille": 1000,
} if {
	some f in input.flows
	f.gas_from_cylinders
	f.cylinders_needed_permille > 1000
}
