# METADATA
# title: The flow of a flammable liquid that may hold charge is not stated
# description: |
#   Its speed decides how much it charges, and nothing here can judge a speed that nobody has planned.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: flows
#   scope: ["!flow_stated", carries_flammable]
#   needs: []
#   absent: [flows.carries_accumulator]
#   message: >-
#     The flammable liquid in run {run} {charge} and its flow is not stated, so its speed could not be
#     checked
#   action: "State the highest planned flow; until then stay at 1 m/s or less in every part."
#   basis:
#     - document: BG RCI explosion-protection answers
#       edition: ""
#       clause: "flow speed, TRGS 727 4.4.1"
#       standing: published
#     - document: API RP 2003
#       edition: ""
#       clause: "loading rates"
#       standing: recalled
package rules.static.rate_not_stated

report contains {"subject": f.id, "run": f.id, "charge": _charge(f)} if {
	some f in input.flows
	not f.flow_stated
	f.carries_flammable
}

_charge(f) := "holds charge" if f.carries_accumulator == true

# Where the conductivity is unknown it counts as low.
_charge(f) := "may hold charge, its conductivity being unknown," if not _conductivity_known(f)

_conductivity_known(f) if f.carries_accumulator in {true, false}
