//! What programs can ask, as OpenAPI 3.1, made from the table the router is made from.

use axum::Json;
use serde_json::{Map, Value, json};

use super::{Route, table};

pub(crate) async fn show() -> Json<Value> {
    Json(description())
}

fn description() -> Value {
    let mut paths: Map<String, Value> = Map::new();
    for route in table() {
        let path = paths.entry(route.path).or_insert_with(|| json!({}));
        if let Some(path) = path.as_object_mut() {
            path.insert(route.method.as_str().to_lowercase(), operation(&route));
        }
    }
    json!({
        "openapi": "3.1.0",
        "info": {
            "title": "Snowhum",
            "version": env!("CARGO_PKG_VERSION"),
            "description": "One yard. Times are RFC 3339; units stand at the end of a name or in the text.",
        },
        "paths": paths,
    })
}

fn operation(route: &Route) -> Value {
    let json_body = |example: Option<Value>| match example {
        Some(example) => json!({ "application/json": { "schema": schema_of(&example), "example": example } }),
        None => json!({ "application/json": {} }),
    };
    let answers: Map<String, Value> = route
        .answers
        .iter()
        .map(|(status, says)| (status.to_string(), json!({ "description": says, "content": json_body(None) })))
        .collect();
    let mut operation = json!({ "summary": route.says, "responses": answers });
    if let Some(members) = operation.as_object_mut() {
        if let Some(body) = route.body {
            members.insert("requestBody".to_owned(), json!({ "required": true, "content": json_body(Some(body())) }));
        }
        if route.path.contains("{id}") {
            let id = json!({ "name": "id", "in": "path", "required": true, "schema": { "type": "string", "format": "uuid" } });
            members.insert("parameters".to_owned(), json!([id]));
        }
    }
    operation
}

/// The form of an example that names every field.
fn schema_of(example: &Value) -> Value {
    match example {
        Value::Object(fields) => {
            let properties: Map<String, Value> =
                fields.iter().map(|(name, value)| (name.clone(), schema_of(value))).collect();
            json!({ "type": "object", "properties": properties, "additionalProperties": false })
        }
        Value::Array(items) => json!({ "type": "array", "items": items.first().map_or_else(|| json!({}), schema_of) }),
        Value::String(_) => json!({ "type": "string" }),
        Value::Number(_) => json!({ "type": "number" }),
        Value::Bool(_) => json!({ "type": "boolean" }),
        Value::Null => json!({}),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_route_of_the_table_is_described() {
        let description = description();
        for route in table() {
            let said = &description["paths"][route.path][route.method.as_str().to_lowercase()];
            assert_eq!(said["summary"], route.says, "{} {}", route.method, route.path);
        }
    }
}
